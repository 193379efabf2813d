import type { HoldView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { decimal, given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { plantInstant } from '../entry/plant-instant.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { Table, type Column } from '../ui/table.js';
import { Day, Moment } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { useZone } from '../entry/use-zone.js';

type Scope = HoldView['scopes'][number];

/** How far a hold reached and reaches, and narrowing it. */
export const NarrowHold = ({ hold }: { readonly hold: HoldView }) => {
  const { t } = useWords();
  const columns = useScopeColumns();
  return (
    <>
      {hold.scopes.length === 0 ? (
        <p>{t('holds.neverBounded')}</p>
      ) : (
        <Table caption={t('holds.scopes')} columns={columns} rows={hold.scopes} />
      )}
      {hold.ended === null ? (
        <Fold summary={t('holds.narrow')}>
          <Allowed to="narrowHold" what={t('holds.narrow')}>
            <NarrowForm hold={hold} />
          </Allowed>
        </Fold>
      ) : null}
    </>
  );
};

const NarrowForm = ({ hold: { id, on, zones } }: { readonly hold: HoldView }) => {
  const { t } = useWords();
  const clock = useZone();
  const instant = (name: 'from' | 'until', typed: string): object =>
    typed === '' ? {} : { [name]: plantInstant(typed, clock) };
  const ofLot = on.what === 'lot' || on.what === 'container';
  return (
    <RecordForm
      groups={[
        {
          fields: [
            ...(ofLot
              ? [
                  {
                    name: 'minShare',
                    label: t('holds.leastShare'),
                    kind: 'decimal' as const,
                    hint: t('holds.leastShareHint'),
                  },
                ]
              : []),
            {
              name: 'zone',
              label: t('holds.zone'),
              kind: 'choice',
              options: zones.map((each) => [each, each]),
              none: t('holds.allZones'),
            },
            { name: 'from', label: t('holds.from'), kind: 'moment' },
            { name: 'until', label: t('holds.until'), kind: 'moment' },
            { name: 'reason', label: t('record.reason'), kind: 'words' },
          ],
        },
      ]}
      button={t('holds.narrowDo')}
      sure={() => t('holds.narrowSure')}
      send={(said, envelope) =>
        post(
          '/api/holds/:hold/scopes',
          { hold: id },
          {
            ...envelope,
            ...(said('minShare') === '' ? {} : { minShare: Number(decimal(said('minShare'))) / 100 }),
            ...given('zone', said('zone')),
            ...instant('from', said('from')),
            ...instant('until', said('until')),
            reason: said('reason'),
          },
        )
      }
      done={({ result }) => <Found of={{ result: {} }} words={t('holds.narrowedNow', result)} />}
    />
  );
};

const useScopeColumns = (): readonly Column<Scope>[] => {
  const { t, percent } = useWords();
  return [
    { head: t('holds.since'), cell: ({ happenedAt }) => <Moment at={happenedAt} />, names: true },
    { head: t('holds.leastShareShort'), cell: ({ minShare }) => percent(minShare), class: 'r' },
    { head: t('holds.zone'), cell: ({ zone }) => zone ?? t('holds.allZones') },
    {
      head: t('holds.period'),
      cell: ({ from, until }) =>
        from === null && until === null ? (
          t('holds.anyTime')
        ) : (
          <>
            {from === null ? '…' : <Day at={from} />} – {until === null ? '…' : <Day at={until} />}
          </>
        ),
    },
    {
      head: t('record.reason'),
      cell: ({ reason }) => (reason === null ? t('holds.asPlaced') : <Said text={reason} />),
    },
    { head: t('holds.by'), cell: ({ by }) => by, class: 'n' },
  ];
};
