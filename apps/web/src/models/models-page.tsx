import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { ModelView } from '@hull-record/contracts';
import { modelsQuery } from '../api/queries.js';
import { WholeTable } from '../asked/whole-table.js';
import { Allowed } from '../entry/allowed.js';
import { Page } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { ModelsWords } from './models-words.js';
import { PART_KINDS, versionsOf } from './part-kinds.js';

/** The models of the plant, with the schedules that are in force. */
export const ModelsPage = () => {
  const { t } = useWords();
  return (
    <Page title={t('app.nav.models')} name={t('app.nav.models')}>
      <ModelsWords>
        <Models />
      </ModelsWords>
    </Page>
  );
};

const Models = () => {
  const { t, figure } = useWords();
  const query = useQuery(modelsQuery);
  return (
    <>
      <Allowed to="registerModel" what={t('models.register')}>
        <p className="buttons">
          <Link to="/models/new" className="btn">
            {t('models.register')}
          </Link>
        </p>
      </Allowed>
      <WholeTable
        what={t('models.the')}
        caption={t('models.caption')}
        columns={[
          {
            head: t('record.model'),
            cell: ({ code }) => (
              <Link to="/models/$model" params={{ model: code }}>
                {code}
              </Link>
            ),
            names: true,
            class: 'n',
          },
          { head: t('models.name'), cell: ({ name }) => name },
          {
            head: t('models.long'),
            cell: ({ skins }) =>
              t('models.m', { m: figure((skins['hull molding']?.lengthMm ?? Number.NaN) / 1000, 4) }),
            class: 'r',
          },
          { head: t('models.newest'), cell: (model) => <InForce of={model} /> },
        ]}
        query={query}
        empty={t('models.none')}
      />
    </>
  );
};

/** The newest version of each kind of part, which parts that are begun now follow. */
const InForce = ({ of }: { readonly of: ModelView }) => {
  const { t, term } = useWords();
  const newest = PART_KINDS.flatMap((kind) => versionsOf(of, kind)[0] ?? []);
  if (newest.length === 0) return <span className="soft">{t('models.noSchedule')}</span>;
  return (
    <ul className="plain close">
      {newest.map(({ partKind, version }) => (
        <li key={partKind}>
          <Link to="/models/$model" params={{ model: of.code }} search={{ part: partKind }}>
            {t('models.versionOf', { kind: term(partKind), version })}
          </Link>
        </li>
      ))}
    </ul>
  );
};
