import { useInfiniteQuery, useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { EquipmentCheckView } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { checksQuery, equipmentQuery, equipmentSuspectsQuery } from '../api/queries-of-equipment.js';
import { useMay } from '../api/use-may.js';
import { Answer } from '../asked/answer.js';
import { PagedTable } from '../asked/paged-table.js';
import { mark } from '../marks/mark.js';
import { HullLink } from '../record/links.js';
import { Empty, Page, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { CheckEquipment } from './check-equipment.js';
import { GunOf } from './gun-of.js';

const route = getRouteApi('/equipment/$code');

/** One piece of equipment: its checks, what is suspect, and the list for a recall. */
export const OneEquipmentPage = () => {
  const { t } = useWords();
  const { code } = route.useParams();
  const query = useQuery(equipmentQuery);
  return (
    <Page title={t('equipment.one', { code })} kind={t('equipment.title')} name={code}>
      <Answer what={t('equipment.one', { code })} query={query}>
        {(all) => {
          const one = all.find((each) => each.code === code);
          return one === undefined ? (
            <Empty>
              {t('equipment.notThere', { code })} <Link to="/equipment">{t('equipment.title')}</Link>
            </Empty>
          ) : (
            <One code={code} kind={one.kind} description={one.description} />
          );
        }}
      </Answer>
    </Page>
  );
};

interface OneProps {
  readonly code: string;
  readonly kind: string;
  readonly description: string;
}

const One = ({ code, kind, description }: OneProps) => {
  const { t } = useWords();
  return (
    <>
      <p className="lead">
        <Term word={kind} />: {description}
      </p>
      <p className="buttons">
        <Link to="/labels" search={{ of: 'equipment', codes: code }} className="btn">
          {t('equipment.printLabel')}
        </Link>
        <a className="btn" href={paperPath('/api/equipment/:equipment/recall.pdf', { equipment: code })}>
          {t('equipment.recall')}
        </a>
      </p>
      {kind === 'gun' ? <GunOf code={code} /> : null}
      <Section name={t('equipment.check')}>
        <CheckEquipment code={code} kind={kind} />
      </Section>
      <Section name={t('equipment.checks')}>
        <Checks code={code} />
      </Section>
      <Section name={t('equipment.suspect')}>
        <Suspects code={code} />
      </Section>
    </>
  );
};

const Checks = ({ code }: { readonly code: string }) => {
  const { t, reading, limits } = useWords();
  const query = useQuery(checksQuery(code));
  return (
    <Answer what={t('equipment.theChecks')} query={query}>
      {(checks) =>
        checks.length === 0 ? (
          <Empty>{t('equipment.noChecks')}</Empty>
        ) : (
          <Table
            caption={t('equipment.checksCaption')}
            columns={[
              { head: t('record.what'), cell: ({ what }) => <Term word={what} />, names: true },
              { head: t('equipment.fit'), cell: (check) => <Good of={check} code={code} /> },
              {
                head: t('equipment.read'),
                cell: ({ value, unit, limits: of }) =>
                  value === null || unit === null
                    ? '–'
                    : `${reading(String(value), null, unit)}${of === null ? '' : `, ${limits(of)}`}`,
              },
              {
                head: t('record.note'),
                cell: ({ note, certificate }) => <Said text={[certificate, note].filter(Boolean).join('; ') || '–'} />,
              },
              { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
            ]}
            rows={checks}
          />
        )
      }
    </Answer>
  );
};

const Good = ({
  of: { id, what, good, disposition },
  code,
}: {
  readonly of: EquipmentCheckView;
  readonly code: string;
}) => {
  const { t, term } = useWords();
  const may = useMay();
  if (good) return mark('inside', t('equipment.isFit'));
  if (disposition !== null) return mark('near', t('equipment.unfitBut', { disposition: term(disposition) }));
  return (
    <>
      {mark('stopped', t('equipment.unfit'))}{' '}
      {may('dispose') ? (
        <Link to="/quality" search={{ about: id, act: 'equipment check', name: `${code}: ${what}` }}>
          {t('equipment.decide')}
        </Link>
      ) : null}
    </>
  );
};

const Suspects = ({ code }: { readonly code: string }) => {
  const { t } = useWords();
  const query = useInfiniteQuery(equipmentSuspectsQuery(code));
  return (
    <PagedTable
      what={t('equipment.suspectThings')}
      caption={t('equipment.suspectCaption')}
      columns={[
        { head: t('record.what'), cell: ({ what }) => <Said text={what} />, names: true },
        { head: t('record.part'), cell: ({ part }) => part, class: 'n' },
        { head: t('record.hull'), cell: ({ hull }) => (hull === null ? '–' : <HullLink to={hull} />), class: 'n' },
        { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
      ]}
      query={query}
      empty={<Empty>{t('equipment.nothingSuspect')}</Empty>}
      note={t('equipment.suspectNote')}
    />
  );
};
