import { useQueries } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { MaterialView, ModelView } from '@hull-record/contracts';
import { materialsQuery, modelsQuery } from '../../api/queries.js';
import { Answer } from '../../asked/answer.js';
import { together } from '../../asked/together.js';
import { Allowed } from '../../entry/allowed.js';
import { Empty, Page } from '../../ui/page.js';
import { Text } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { ModelsWords } from '../models-words.js';
import { isPartKind, type PartKindName } from '../part-kinds.js';
import { ScheduleForm } from './schedule-form.js';

const route = getRouteApi('/models/$model/schedule');

/** Where the next version of a schedule is entered, beginning with the one before. */
export const NewVersionPage = () => {
  const { t } = useWords();
  const { model } = route.useParams();
  return (
    <Page title={`${t('record.model')} ${model}`} kind={t('record.model')} name={model}>
      <ModelsWords>
        <NewVersion code={model} />
      </ModelsWords>
    </Page>
  );
};

const NewVersion = ({ code }: { readonly code: string }) => {
  const { t } = useWords();
  const { part } = route.useSearch();
  const query = useQueries({ queries: [modelsQuery, materialsQuery], combine: together });
  return (
    <Allowed to="publishSchedule" what={t('schedule.title')}>
      <Answer what={t('schedule.theModels')} query={query}>
        {([models, materials]) => {
          const model = models.find((each) => each.code === code);
          if (model === undefined)
            return (
              <Empty>
                <Text
                  of="models.notThere"
                  with={{ model: code, list: (inside) => <Link to="/models">{inside}</Link> }}
                />
              </Empty>
            );
          if (!isPartKind(part)) return <NoPart code={code} />;
          return <ForPart model={model} partKind={part} materials={materials} />;
        }}
      </Answer>
    </Allowed>
  );
};

const NoPart = ({ code }: { readonly code: string }) => (
  <Empty>
    <Text
      of="schedule.noPart"
      with={{
        model: (inside) => (
          <Link to="/models/$model" params={{ model: code }}>
            {inside}
          </Link>
        ),
      }}
    />
  </Empty>
);

interface ForPartProps {
  readonly model: ModelView;
  readonly partKind: PartKindName;
  readonly materials: readonly MaterialView[];
}

const ForPart = ({ model, partKind, materials }: ForPartProps) => {
  if (materials.length > 0)
    return <ScheduleForm key={`${model.code} ${partKind}`} {...{ model, partKind, materials }} />;
  return (
    <Empty>
      <Text of="schedule.noMaterials" with={{ list: (inside) => <Link to="/store/materials">{inside}</Link> }} />
    </Empty>
  );
};
