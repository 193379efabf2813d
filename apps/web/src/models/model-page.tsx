import { useQueries } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { ModelView } from '@hull-record/contracts';
import { materialsQuery, modelsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { together } from '../asked/together.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { Geometry } from './geometry.js';
import { ModelsWords } from './models-words.js';
import { Schedules } from './schedules.js';

const route = getRouteApi('/models/$model');

/** One model: the skins of its parts, and its laminate schedules version by version. */
export const ModelPage = () => {
  const { t } = useWords();
  const { model } = route.useParams();
  return (
    <Page title={`${t('record.model')} ${model}`} kind={t('record.model')} name={model}>
      <ModelsWords>
        <Model code={model} />
      </ModelsWords>
    </Page>
  );
};

const Model = ({ code }: { readonly code: string }) => {
  const { t } = useWords();
  const query = useQueries({ queries: [modelsQuery, materialsQuery], combine: together });
  return (
    <Answer what={t('models.one', { model: code })} query={query}>
      {([models, materials]) => {
        const model = models.find((each) => each.code === code);
        if (model === undefined)
          return (
            <Empty>
              <Text of="models.notThere" with={{ model: code, list: (inside) => <Link to="/models">{inside}</Link> }} />
            </Empty>
          );
        return (
          <>
            <Identity of={model} />
            <Section name={t('models.schedules')}>
              <Schedules model={model} materials={materials} />
            </Section>
            <Section name={t('models.geometry')}>
              <Geometry of={model} />
            </Section>
          </>
        );
      }}
    </Answer>
  );
};

const Identity = ({ of: { code, name, requiredParts } }: { readonly of: ModelView }) => {
  const { t, term } = useWords();
  return (
    <div className="head">
      <Facts
        rows={[
          [t('models.name'), name],
          [t('models.required'), requiredParts.map(term).join(', ')],
        ]}
      />
      <p>
        <Link to="/map" search={{ model: code }}>
          {t('models.map')}
        </Link>
      </p>
    </div>
  );
};
