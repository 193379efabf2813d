import type { OwnerFile } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { ownerQuery } from '../api/queries-of-owners.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { Answer } from '../asked/answer.js';
import { HullLink } from '../record/links.js';
import { Facts, Page, Section } from '../ui/page.js';
import { CalendarDay, Day } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { LegalHoldsOf } from './legal-holds-of.js';
import { CorrectIt, EraseIt, RequestsOf } from './requests-of.js';

const route = getRouteApi('/owners/$owner');

/** One owner: what is on record, what was asked for, and how it is answered. */
export const OwnerPage = () => (
  <AfterSaleWords>
    <One />
  </AfterSaleWords>
);

const One = () => {
  const { t } = useWords();
  const { owner } = route.useParams();
  const query = useQuery(ownerQuery(owner));
  return (
    <Page title={t('owners.owner')} name={t('owners.owner')}>
      <Answer what={t('owners.theOwner')} query={query}>
        {(file) => (
          <>
            <Kept of={file} />
            <RequestsOf of={file} />
            <Section name={t('owners.give')}>
              <p>{t('owners.giveIs')}</p>
              <p className="buttons">
                <a className="btn" href={`/api/owners/${encodeURIComponent(owner)}/data.json`}>
                  {t('owners.asFile')}
                </a>
                <a className="btn" href={`/api/owners/${encodeURIComponent(owner)}/data.csv`}>
                  {t('owners.asTable')}
                </a>
              </p>
            </Section>
            {file.detail === null ? null : <CorrectIt of={file} detail={file.detail} />}
            {file.detail === null ? null : <EraseIt of={file} />}
            <p>
              <Link to="/owners/hulls/$hull" params={{ hull: file.hull }}>
                {t('owners.toRedactable')}
              </Link>
            </p>
            <LegalHoldsOf of={file} />
            <Changes of={file} />
            <Section name={t('owners.stays')}>
              <ul className="plain">
                {file.stays.map((line) => (
                  <li key={line}>
                    <Said text={line} />
                  </li>
                ))}
              </ul>
            </Section>
          </>
        )}
      </Answer>
    </Page>
  );
};

const Kept = ({ of: { hull, what, since, state, detail, keptUntil, keptBecause } }: { readonly of: OwnerFile }) => {
  const { t } = useWords();
  return (
    <>
      {state === 'narrowed' ? <p className="lead">{t('owners.narrowedIs')}</p> : null}
      {state === 'erased' ? <p className="lead">{t('owners.erasedIs')}</p> : null}
      <Facts
        rows={[
          [t('record.hull'), <HullLink to={hull} />],
          [t('owners.what1'), <Term word={what} />],
          [t('owners.since'), <Day at={since} />],
          [t('owners.name'), detail?.name ?? null],
          [t('owners.address'), detail?.address ?? null],
          [t('owners.email'), detail?.email ?? null],
          [t('owners.phone'), detail?.phone ?? null],
          [t('owners.keptUntil'), keptUntil === null ? t('owners.nothingKeeps') : <CalendarDay at={keptUntil} />],
          [t('owners.because'), keptBecause === null ? null : <Said text={keptBecause} />],
        ]}
      />
    </>
  );
};

const Changes = ({ of: { changes } }: { readonly of: OwnerFile }) => {
  const { t } = useWords();
  if (changes.length === 0) return null;
  return (
    <Section name={t('owners.changes')}>
      <ul className="plain">
        {changes.map(({ what, erased, at, reason }) => (
          <li key={at}>
            <Day at={at} /> {t(what === 'narrowed' ? 'owners.wasNarrowed' : 'owners.wasCorrected')}{' '}
            <Said text={reason} /> {erased.length === 0 ? null : t('owners.without', { fields: erased.join(', ') })}
          </li>
        ))}
      </ul>
    </Section>
  );
};
