import { getRouteApi, Link } from '@tanstack/react-router';
import type { MaterialView, ModelView } from '@hull-record/contracts';
import { Allowed } from '../../entry/allowed.js';
import { Empty } from '../../ui/page.js';
import { Text } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { OneModelPage, WithModel } from '../one-model.js';
import { isPartKind, type PartKindName } from '../part-kinds.js';
import { ScheduleForm } from './schedule-form.js';

const route = getRouteApi('/models/$model/schedule');

/** Where the next version of a schedule is entered, beginning with the one before. */
export const NewVersionPage = () => {
  const { model } = route.useParams();
  return (
    <OneModelPage code={model}>
      <NewVersion code={model} />
    </OneModelPage>
  );
};

const NewVersion = ({ code }: { readonly code: string }) => {
  const { t } = useWords();
  const { part } = route.useSearch();
  return (
    <Allowed to="publishSchedule" what={t('schedule.title')}>
      <WithModel code={code} what={t('schedule.theModels')}>
        {(model, materials) =>
          isPartKind(part) ? <ForPart model={model} partKind={part} materials={materials} /> : <NoPart code={code} />
        }
      </WithModel>
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
