import { useNavigate } from '@tanstack/react-router';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { DraftForm } from '../entry/draft/draft-form.js';
import { DraftInput } from '../entry/draft/draft-input.js';
import { useDraftFields } from '../entry/draft/draft-context.js';
import { shapeOf } from '../entry/draft/draft-nodes.js';
import { useDraft } from '../entry/draft/use-draft.js';
import { mark } from '../marks/mark.js';
import { Button } from '../ui/button.js';
import { Group } from '../ui/group.js';
import { Page } from '../ui/page.js';
import { Tick } from '../ui/tick.js';
import { useWords } from '../words/use-words.js';
import { BLANK_MODEL, checkModel, modelBody, type ModelDraft } from './model-draft.js';
import { ModelsWords } from './models-words.js';
import { PART_KINDS } from './part-kinds.js';
import { SkinFields } from './skin-fields.js';

/** Where a model is registered: its code, the parts a hull needs, and the skin of each part, drawn while it is typed. */
export const NewModelPage = () => {
  const { t } = useWords();
  return (
    <Page title={t('app.nav.models')} name={t('app.nav.models')}>
      <ModelsWords>
        <NewModel />
      </ModelsWords>
    </Page>
  );
};

const NewModel = () => {
  const { t } = useWords();
  return (
    <>
      <h2>{t('models.register')}</h2>
      <p className="lead">{t('models.registerLead')}</p>
      <Allowed to="registerModel" what={t('models.register')}>
        <ModelForm />
      </Allowed>
    </>
  );
};

const LABELS = {
  '/code': 'models.code',
  '/name': 'models.name',
  '/requiredParts': 'models.requiredParts',
  '/lengthMm': 'models.lengthMm',
  '/stations': 'models.stations',
  '/stations/*/xMm': 'models.xMm',
  '/stations/*/edgeGirthMm': 'models.edgeGirthMm',
  '/stations/*/chineGirthMm': 'models.chineGirthMm',
  '/stations/*/waterlineGirthMm': 'models.waterlineGirthMm',
  '/transom/halfWidthMm': 'models.halfWidthMm',
  '/transom/heightMm': 'models.heightMm',
} as const;

const REQUIRED = '/requiredParts';
const OF_SKIN = /^\/skins\/([^/]+)(?=\/)/;

const ModelForm = () => {
  const { t, term } = useWords();
  const navigate = useNavigate();
  const draft = useDraft<ModelDraft>('model 1', BLANK_MODEL);
  const whereOf = (pointer: string): string => {
    const kind = OF_SKIN.exec(pointer)?.[1];
    return kind === undefined ? '' : `${t('models.skinOf', { kind: term(kind) })} · `;
  };
  const labelOf = (pointer: string): string | undefined => {
    const shape = shapeOf(pointer.replace(OF_SKIN, '')) as keyof typeof LABELS;
    const key = LABELS[shape] as (typeof LABELS)[keyof typeof LABELS] | undefined;
    return key === undefined ? undefined : t(key);
  };
  return (
    <>
      {draft.isKept ? <p>{mark('to come', t('models.isKept'))}</p> : null}
      <DraftForm
        draft={draft}
        button={t('models.register')}
        labelOf={labelOf}
        whereOf={whereOf}
        check={(value) => checkModel(value, (fault) => t(`models.fault.${fault}`))}
        send={(value, envelope) => post('/api/models', {}, { ...envelope, ...modelBody(value) })}
        onDone={({ result }) => void navigate({ to: '/models/$model', params: { model: result.code } })}
      >
        <DraftInput at="/code" />
        <DraftInput at="/name" kind="words" hint={t('models.nameHint')} />
        <RequiredParts />
        {PART_KINDS.map((kind) => (
          <SkinFields key={kind} kind={kind} skin={draft.value.skins[kind]} />
        ))}
      </DraftForm>
      {draft.isKept ? <Button onPress={draft.drop}>{t('models.startAgain')}</Button> : null}
    </>
  );
};

const RequiredParts = () => {
  const { t, term } = useWords();
  const fields = useDraftFields();
  const chosen = (fields.at(REQUIRED) ?? []) as readonly string[];
  return (
    <Group name={t('models.requiredParts')}>
      {PART_KINDS.map((kind) => (
        <Tick
          key={kind}
          name={REQUIRED}
          label={term(kind)}
          on={chosen.includes(kind)}
          onChange={(on) =>
            fields.put(
              REQUIRED,
              PART_KINDS.filter((each) => (each === kind ? on : chosen.includes(each))),
            )
          }
        />
      ))}
    </Group>
  );
};
