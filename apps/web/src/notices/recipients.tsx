import { useQuery } from '@tanstack/react-query';
import type { Recipient } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { recipientsQuery } from '../api/queries-of-holds.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { Joined } from '../ui/joined.js';
import { Empty } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const CLASSES = ['first-class mail', 'certified mail', 'more expeditious, in writing'] as const;

/** Whom a notice goes to by name, letters that were mailed, and those that came back: personal data. */
export const Recipients = ({ notice }: { readonly notice: string }) => {
  const { t } = useWords();
  const columns = useColumns();
  return (
    <Answer what={t('notices.theRecipients')} query={useQuery(recipientsQuery(notice))}>
      {(list) =>
        list.length === 0 ? (
          <Empty>{t('notices.nobody')}</Empty>
        ) : (
          <>
            <Table caption={t('notices.recipientList')} columns={columns} rows={list} />
            <Fold summary={t('notices.mailed')}>
              <Allowed to="mailNotice" what={t('notices.mailed')}>
                <Mailed notice={notice} list={list} />
              </Allowed>
            </Fold>
            <Fold summary={t('notices.cameBack')}>
              <Allowed to="returnMailing" what={t('notices.cameBack')}>
                <CameBack list={list} />
              </Allowed>
            </Fold>
          </>
        )
      }
    </Answer>
  );
};

const useColumns = (): readonly Column<Recipient>[] => {
  const { t, term } = useWords();
  return [
    { head: t('notices.name'), cell: ({ name }) => name ?? t('notices.erased'), names: true },
    { head: t('notices.kind'), cell: ({ kind }) => term(kind) },
    { head: t('record.hull'), cell: ({ hulls }) => hulls.join(', '), class: 'n' },
    { head: t('notices.addressOf'), cell: ({ address }) => address ?? '–' },
    { head: t('notices.stateOf'), cell: ({ state }) => term(state) },
    {
      head: t('notices.lettersMailed'),
      cell: ({ mailings }) => (
        <Joined by="; ">
          {mailings.map(({ id, hull, class: by, proof, happenedAt, returned }) => (
            <span key={id} className="wraps">
              <span className="n">{hull}</span> {term(by)} <Day at={happenedAt} /> {proof ?? ''}
              {returned === null ? null : (
                <>
                  {' '}
                  <strong>{t('notices.returnedBecause')}</strong> <Said text={returned.why} />
                </>
              )}
            </span>
          ))}
        </Joined>
      ),
    },
  ];
};

const Mailed = ({ notice, list }: { readonly notice: string; readonly list: readonly Recipient[] }) => {
  const { t, term } = useWords();
  const tick = (to: Recipient): string => `tick ${to.owner ?? to.dealer ?? ''}`;
  return (
    <RecordForm
      groups={[
        {
          name: t('notices.toWhom'),
          fields: list.map((to) => ({
            name: tick(to),
            label: t('notices.recipientOf', { name: to.name ?? t('notices.erased'), hulls: to.hulls.join(', ') }),
            kind: 'tick' as const,
          })),
        },
        {
          fields: [
            {
              name: 'class',
              label: t('notices.class'),
              kind: 'choice',
              options: CLASSES.map((each) => [each, term(each)]),
              hint: t('notices.classHint'),
            },
            { name: 'proof', label: t('notices.proof'), hint: t('notices.proofHint'), pointer: '/recipients' },
          ],
        },
      ]}
      button={t('notices.mailedDo')}
      late
      send={(said, envelope) =>
        post(
          '/api/notices/:notice/mailings',
          { notice },
          {
            ...envelope,
            class: said('class') as (typeof CLASSES)[number],
            recipients: list
              .filter((to) => said(tick(to)) === 'yes')
              .flatMap((to) =>
                to.hulls.map((hull) => ({
                  hull,
                  ...(to.owner === null ? { dealer: to.dealer ?? '' } : { owner: to.owner }),
                  ...given('proof', said('proof')),
                })),
              ),
          },
        )
      }
      done={({ result }) => <Found of={{ result: {} }} words={t('notices.mailedNow', { letters: result.mailed })} />}
    />
  );
};

const CameBack = ({ list }: { readonly list: readonly Recipient[] }) => {
  const { t } = useWords();
  const letters = list.flatMap(({ name, mailings }) =>
    mailings
      .filter(({ returned }) => returned === null)
      .map(({ id, hull }) => [id, `${name ?? t('notices.erased')}, ${hull}`] as const),
  );
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'mailing', label: t('notices.letter'), kind: 'choice', options: letters },
            { name: 'why', label: t('notices.whyBack'), kind: 'words', hint: t('notices.whyBackHint') },
          ],
        },
      ]}
      button={t('notices.cameBackDo')}
      late
      send={(said, envelope) =>
        post('/api/mailings/:mailing/returns', { mailing: said('mailing') }, { ...envelope, why: said('why') })
      }
      done={() => <Found of={{ result: {} }} words={t('notices.cameBackNow')} />}
    />
  );
};
