import { getRouteApi, Link } from '@tanstack/react-router';
import type { ModelView } from '@hull-record/contracts';
import { Facts, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { Geometry } from './geometry.js';
import { OneModelPage, WithModel } from './one-model.js';
import { Schedules } from './schedules.js';

const route = getRouteApi('/models/$model');

/** One model: the skins of its parts, and its laminate schedules version by version. */
export const ModelPage = () => {
  const { model } = route.useParams();
  return (
    <OneModelPage code={model}>
      <Model code={model} />
    </OneModelPage>
  );
};

const Model = ({ code }: { readonly code: string }) => {
  const { t } = useWords();
  return (
    <WithModel code={code} what={t('models.one', { model: code })}>
      {(model, materials) => (
        <>
          <Identity of={model} />
          <Section name={t('models.schedules')}>
            <Schedules model={model} materials={materials} />
          </Section>
          <Section name={t('models.geometry')}>
            <Geometry of={model} />
          </Section>
        </>
      )}
    </WithModel>
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
