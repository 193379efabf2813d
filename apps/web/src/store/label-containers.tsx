import { Link } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { amountAtFirst, amountFields, amountOf } from '../entry/amount-fields.js';
import { given, type Said } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { useWords } from '../words/use-words.js';
import { labelsOf } from './labels-of.js';

const KINDS = ['drum', 'tote', 'pail', 'bag', 'box', 'roll', 'sheet'] as const;

interface LabelContainersProps {
  readonly lot: string;
  /** What of the lot is to be divided among them. */
  readonly amount: ReturnType<typeof amountOf>;
  /** How many of its containers have a label already. */
  readonly have?: number;
}

/** Gives each container of a lot its label: how many, of which kind, where they stand; then they are printed. */
export const LabelContainers = ({ lot, amount, have = 0 }: LabelContainersProps) => {
  const words = useWords();
  const { t, term } = words;
  const labels = (said: Said): readonly string[] => labelsOf(lot, Number(said('count')) || 0, have);
  return (
    <Allowed to="labelContainers" what={t('store.containers')}>
      <RecordForm
        groups={[
          {
            fields: [
              { name: 'count', label: t('store.howMany'), kind: 'decimal', pointer: '/containers' },
              {
                name: 'kind',
                label: t('store.kind'),
                kind: 'choice',
                options: KINDS.map((kind) => [kind, term(kind)]),
              },
              { name: 'place', label: t('record.place'), hint: t('store.placeHint') },
            ],
          },
          {
            name: t('store.inEach'),
            fields: amountFields(words, {
              name: 'each',
              label: t('store.howMuch'),
              pointer: '/containers/0/amount',
              hint: t('store.eachHint'),
            }),
          },
        ]}
        first={{ ...amountAtFirst('each', amount.unit), count: '1' }}
        button={t('store.labelDo')}
        send={(said, envelope) => {
          const each =
            said('each') === ''
              ? { ...amount, quantity: share(amount.quantity, labels(said).length) }
              : amountOf(said, 'each');
          return post(
            '/api/lots/:lot/containers',
            { lot },
            {
              ...envelope,
              containers: labels(said).map((label) => ({
                label,
                kind: said('kind') as (typeof KINDS)[number],
                amount: each,
                ...given('place', said('place')),
              })),
            },
          );
        }}
        done={({ result }) => (
          <p>
            {mark('made', t('store.labelled', { count: result.labels.length, lot }))}{' '}
            <Link to="/labels" search={{ of: 'container', codes: result.labels.join(',') }}>
              {t('store.printLabels')}
            </Link>
          </p>
        )}
      >
        {(said) => (
          <p className="note soft wide">
            {labels(said).length === 0
              ? t('store.sayHowMany')
              : t('store.labelsWillBe', { labels: namesOf(labels(said)) })}
          </p>
        )}
      </RecordForm>
    </Allowed>
  );
};

const namesOf = (labels: readonly string[]): string =>
  labels.length < 4 ? labels.join(', ') : `${labels[0]}, ${labels[1]} … ${labels.at(-1)}`;

/** An equal share, to nine digits after the point, as the record keeps decimals. */
const share = (quantity: string, count: number): string =>
  count <= 1 ? quantity : (Number(quantity) / count).toFixed(9).replace(/\.?0+$/, '');
