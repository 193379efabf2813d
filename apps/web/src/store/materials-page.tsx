import { useQuery } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import { materialsQuery } from '../api/queries.js';
import { WholeTable } from '../asked/whole-table.js';
import { Allowed } from '../entry/allowed.js';
import { decimal, type EntryField } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Page, Section } from '../ui/page.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const ROLES = [
  ...['gel coat', 'resin', 'catalyst', 'promoter', 'inhibitor', 'pigment'],
  ...['glass', 'core', 'board', 'putty', 'bonding paste', 'release'],
] as const;
const FIGURES = ['shelfLifeDays', 'densityKgPerL', 'arealMassKgPerM2', 'pieceMassKg'] as const;

/** The materials that lots are received of, and a new one. */
export const MaterialsPage = () => {
  const { t } = useWords();
  const query = useQuery(materialsQuery);
  return (
    <Page title={t('store.materials')} name={t('store.materials')}>
      <Section name={t('store.registerMaterial')}>
        <Allowed to="registerMaterial" what={t('store.registerMaterial')}>
          <NewMaterial />
        </Allowed>
      </Section>
      <Section name={t('store.known')}>
        <WholeTable
          what={t('store.theMaterials')}
          caption={t('store.materialsCaption')}
          columns={[
            { head: t('store.materialCode'), cell: ({ code }) => code, names: true, class: 'n' },
            { head: t('store.materialName'), cell: ({ name }) => name },
            { head: t('store.role'), cell: ({ role }) => <Term word={role} /> },
            { head: t('store.maker'), cell: ({ maker }) => maker ?? '–' },
            {
              head: t('store.figure.shelfLifeDays'),
              cell: ({ shelfLifeDays }) => shelfLifeDays ?? '–',
              class: 'r',
            },
          ]}
          query={query}
          empty={t('store.noMaterials')}
        />
      </Section>
    </Page>
  );
};

const NewMaterial = () => {
  const { t, term } = useWords();
  const figures: readonly EntryField[] = FIGURES.map((name) => ({
    name,
    label: t(`store.figure.${name}`),
    kind: 'decimal',
  }));
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'code', label: t('store.materialCode') },
            { name: 'name', label: t('store.materialName') },
            { name: 'role', label: t('store.role'), kind: 'choice', options: ROLES.map((role) => [role, term(role)]) },
            { name: 'maker', label: t('store.maker') },
          ],
        },
        {
          name: t('store.figures'),
          fields: [
            ...figures,
            {
              name: 'lossAllowance',
              label: t('store.lossAllowance'),
              kind: 'decimal',
              hint: t('store.lossAllowanceHint'),
            },
          ],
        },
      ]}
      button={t('store.registerMaterial')}
      send={(said, envelope) =>
        post(
          '/api/materials',
          {},
          {
            ...envelope,
            code: said('code'),
            name: said('name'),
            role: said('role') as (typeof ROLES)[number],
            ...(said('maker') === '' ? {} : { maker: said('maker') }),
            ...Object.fromEntries(
              FIGURES.filter((name) => said(name) !== '').map((name) => [name, Number(decimal(said(name)))]),
            ),
            ...(said('lossAllowance') === '' ? {} : { lossAllowance: Number(decimal(said('lossAllowance'))) / 100 }),
          },
        )
      }
      done={({ result }) => <p>{mark('made', t('store.registered', { code: result.code }))}</p>}
    />
  );
};
