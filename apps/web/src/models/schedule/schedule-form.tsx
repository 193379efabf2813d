import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import type { MaterialView, ModelView, ScheduleView } from '@hull-record/contracts';
import { post } from '../../api/ask.js';
import { DraftForm } from '../../entry/draft/draft-form.js';
import { DraftInput } from '../../entry/draft/draft-input.js';
import { useDraft } from '../../entry/draft/use-draft.js';
import { Button } from '../../ui/button.js';
import { Section } from '../../ui/page.js';
import { useWords } from '../../words/use-words.js';
import { ChangesShown } from '../changes-shown.js';
import { versionsOf, type PartKindName } from '../part-kinds.js';
import { checkSchedule } from './check-schedule.js';
import { KeptDraft } from './kept-draft.js';
import { LayerFields } from './layer-fields.js';
import { LayerList } from './layer-list.js';
import { bodyOf, draftOf, named, type ScheduleDraft } from './schedule-draft.js';
import { layerIndexOf, useScheduleLabels } from './use-schedule-labels.js';
import { viewOf } from './view-of.js';

interface ScheduleFormProps {
  readonly model: ModelView;
  readonly partKind: PartKindName;
  readonly materials: readonly MaterialView[];
}

const PROCESSES = ['hand lay-up', 'spray-up'] as const;

/** The next version of a schedule: its layers beside the fields of the one that is being edited, and what differs so far. */
export const ScheduleForm = ({ model, partKind, materials }: ScheduleFormProps) => {
  const { t, term } = useWords();
  const navigate = useNavigate();
  const versions = versionsOf(model, partKind);
  const [newest] = versions;
  const draft = useDraft<ScheduleDraft>(`schedule 1 ${model.code} ${partKind}`, draftOf(newest));
  const [{ opened, byHand }, setOpened] = useState({ opened: 0, byHand: false });
  const { layers, basedOn } = draft.value;
  const open = Math.min(opened, layers.length - 1);
  const labels = useScheduleLabels(draft.value);
  const version = (newest?.version ?? 0) + 1;
  const before = versions.find((each) => each.version === basedOn);
  return (
    <>
      <h2>{t('schedule.name', { model: model.code, kind: term(partKind), version })}</h2>
      <p className="lead">
        {before === undefined ? t('schedule.leadFirst') : t('schedule.lead', { before: before.version, version })}
      </p>
      <KeptDraft draft={draft} newest={newest} />
      <p className="caution">{t('schedule.caution')}</p>
      <DraftForm
        draft={draft}
        {...labels}
        button={t('schedule.publish', { version })}
        check={(value) => checkSchedule(value, (fault) => t(`models.fault.${fault}`))}
        send={(value, envelope) =>
          post(
            '/api/models/:model/schedules',
            { model: model.code },
            { ...envelope, ...bodyOf(value, partKind, version) },
          )
        }
        sure={() => t('schedule.sure', { version, kind: term(partKind), model: model.code })}
        onWrong={(pointer) => setOpened((now) => ({ opened: layerIndexOf(pointer) ?? now.opened, byHand: false }))}
        onDone={() =>
          void navigate({ to: '/models/$model', params: { model: model.code }, search: { part: partKind } })
        }
      >
        <DraftInput at="/process" kind="choice" options={PROCESSES.map((each) => [each, term(each)])} />
        <div className="schedule-edit">
          <LayerList
            layers={layers}
            materials={materials}
            open={open}
            onOpen={(index, isAsked) => setOpened({ opened: index, byHand: isAsked })}
          />
          <LayerFields key={layers[open]?.key} index={open} {...{ layers, materials }} takesFocus={byHand} />
        </div>
        <SoFar before={before} draft={draft.value} version={version} />
      </DraftForm>
      {draft.isKept ? <Button onPress={draft.drop}>{t('models.startAgain')}</Button> : null}
    </>
  );
};

interface SoFarProps {
  readonly before: ScheduleView | undefined;
  readonly draft: ScheduleDraft;
  readonly version: number;
}

const SoFar = ({ before, draft, version }: SoFarProps) => {
  const { t } = useWords();
  if (before === undefined) return null;
  const layers = named(draft.layers, t('schedule.unnamed'));
  return (
    <div className="wide">
      <Section name={t('schedule.soFar')}>
        <ChangesShown before={before} now={viewOf({ ...draft, layers }, before, version)} />
      </Section>
    </div>
  );
};
