import type { OwnNews } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import { ownNewsQuery } from '../api/queries-of-own.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { ChangedValues } from '../record/changed-values.js';
import { Fold } from '../ui/fold.js';
import { Section } from '../ui/page.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** What the builder told the dealer: what was not acknowledged yet stands open, the rest is folded. */
export const News = () => {
  const { t } = useWords();
  const query = useQuery(ownNewsQuery);
  return (
    <Section name={t('own.news')}>
      <Answer what={t('own.theNews')} query={query}>
        {(all) => {
          const [open, noted] = [all.filter((one) => !one.acknowledgedAt), all.filter((one) => one.acknowledgedAt)];
          return (
            <>
              {open.length === 0 ? <p className="soft">{t('own.noNews')}</p> : null}
              <ul className="plain">
                {open.map((one) => (
                  <li key={one.id}>
                    <Told one={one} />
                    <Acknowledge one={one} />
                  </li>
                ))}
              </ul>
              {noted.length === 0 ? null : (
                <Fold summary={t('own.noted', { count: noted.length })}>
                  <ul className="plain">
                    {noted.map((one) => (
                      <li key={one.id}>
                        <Told one={one} />
                        <p className="soft">
                          {t('own.notedOn')} <Day at={one.acknowledgedAt ?? one.at} />
                        </p>
                      </li>
                    ))}
                  </ul>
                </Fold>
              )}
            </>
          );
        }}
      </Answer>
    </Section>
  );
};

const Told = ({ one: { hull, at, notice, contents, certificate, issue, changed } }: { readonly one: OwnNews }) => {
  const { t } = useWords();
  return (
    <>
      <p>
        <b>
          {notice === null
            ? t('own.withdrawn', { number: certificate ?? '', issue: issue ?? 0 })
            : t('own.notice', { notice })}
        </b>{' '}
        {t('record.hull')} <span className="n">{hull}</span>, <Day at={at} />
      </p>
      {contents === null ? (
        <p>
          {t('certificate.askBuilder')} {changed === null ? null : t('own.since')}
        </p>
      ) : (
        <>
          <p>
            <Said text={contents.defect} />
          </p>
          <p>
            <Said text={contents.hazard} />
          </p>
          <p>
            <Said text={contents.measures} />
          </p>
        </>
      )}
      <ChangedValues of={changed ?? []} />
    </>
  );
};

const Acknowledge = ({ one: { id, hull } }: { readonly one: OwnNews }) => {
  const { t } = useWords();
  const name = t('own.acknowledge', { hull });
  return (
    <Allowed to="acknowledge" what={name}>
      <RecordForm
        groups={[]}
        button={name}
        send={(_, envelope) => post('/api/own-acknowledgements', {}, { ...envelope, about: id })}
        done={() => <p>{t('own.acknowledged')}</p>}
      />
    </Allowed>
  );
};
