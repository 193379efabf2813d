import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import type { GetAnswer } from '../api/contract.js';
import { equipmentQuery } from '../api/queries-of-equipment.js';
import { Answer } from '../asked/answer.js';
import { FilterForm } from '../asked/filter-form.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Empty, Page, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { dueOf, inOrderOfNeed } from './due.js';

type Equipment = GetAnswer<'/api/equipment'>[number];
const route = getRouteApi('/equipment');
const KINDS = ['gauge', 'gun', 'dispenser', 'scale', 'oven'] as const;

/** Gauges, guns, dispensers, scales and ovens: what is unfit or due for a check stands first. */
export const EquipmentPage = () => {
  const { t, term } = useWords();
  const query = useQuery(equipmentQuery);
  const { guns = '1', others = '365' } = route.useSearch();
  const navigate = route.useNavigate();
  return (
    <Page title={t('equipment.title')} name={t('equipment.title')}>
      <p className="buttons">
        <Link to="/molds" className="btn">
          {t('molds.title')}
        </Link>
      </p>
      <FilterForm
        button={t('app.show')}
        fields={[
          { name: 'guns', label: t('equipment.gunDays'), kind: 'text' },
          { name: 'others', label: t('equipment.otherDays'), kind: 'text' },
        ]}
        values={{ guns, others }}
        onChosen={(search) => void navigate({ search, replace: true })}
      />
      <p className="note soft">{t('equipment.dueNote')}</p>
      <Answer what={t('equipment.the')} query={query}>
        {(found) =>
          found.length === 0 ? (
            <Empty>{t('equipment.none')}</Empty>
          ) : (
            <List equipment={found} days={{ gun: Number(guns), other: Number(others) }} readAt={query.dataUpdatedAt} />
          )
        }
      </Answer>
      <Section name={t('equipment.register')}>
        <Allowed to="registerEquipment" what={t('equipment.register')}>
          <RecordForm
            groups={[
              {
                fields: [
                  { name: 'code', label: t('equipment.code') },
                  {
                    name: 'kind',
                    label: t('equipment.kind'),
                    kind: 'choice',
                    options: KINDS.map((kind) => [kind, term(kind)]),
                  },
                  { name: 'description', label: t('equipment.description'), kind: 'words' },
                ],
              },
            ]}
            button={t('equipment.register')}
            send={(said, envelope) =>
              post(
                '/api/equipment',
                {},
                {
                  ...envelope,
                  code: said('code'),
                  kind: said('kind') as (typeof KINDS)[number],
                  description: said('description'),
                },
              )
            }
            done={({ result }) => <p>{mark('made', t('equipment.registered', { code: result.code }))}</p>}
          />
        </Allowed>
      </Section>
    </Page>
  );
};

interface ListProps {
  readonly equipment: readonly Equipment[];
  readonly days: { readonly gun: number; readonly other: number };
  /** When it was read, ms since 1970: what is due is due then. */
  readonly readAt: number;
}

const List = ({ equipment, days, readAt }: ListProps) => {
  const { t } = useWords();
  const rows = inOrderOfNeed(equipment, days, readAt);
  return (
    <Table
      caption={t('equipment.caption')}
      columns={[
        {
          head: t('equipment.code'),
          cell: ({ code }) => (
            <Link to="/equipment/$code" params={{ code }}>
              {code}
            </Link>
          ),
          names: true,
          class: 'n',
        },
        { head: t('equipment.kind'), cell: ({ kind }) => <Term word={kind} /> },
        { head: t('equipment.description'), cell: ({ description }) => description },
        { head: t('equipment.fit'), cell: (each) => <Fit of={each} due={dueOf(each, days, readAt)} /> },
        {
          head: t('equipment.lastCheck'),
          cell: ({ lastCheck }) =>
            lastCheck === null ? (
              '–'
            ) : (
              <>
                <Term word={lastCheck.what} />, <Moment at={lastCheck.happenedAt} />
              </>
            ),
        },
      ]}
      rows={rows}
    />
  );
};

const Fit = ({ of: { lastGood }, due }: { readonly of: Equipment; readonly due: ReturnType<typeof dueOf> }) => {
  const { t } = useWords();
  if (due === 'unfit')
    return mark(
      'stopped',
      <>
        {t('equipment.unfit')}
        {lastGood === null ? (
          t('equipment.neverGood')
        ) : (
          <>
            {t('equipment.goodUntil')} <Moment at={lastGood.happenedAt} />
          </>
        )}
      </>,
    );
  if (due === 'never') return mark('near', t('equipment.never'));
  return due === 'due' ? mark('near', t('equipment.isDue')) : mark('inside', t('equipment.isFit'));
};
