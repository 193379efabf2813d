import { useDraftFields } from '../entry/draft/draft-context.js';
import { DraftInput } from '../entry/draft/draft-input.js';
import { DraftRows } from '../entry/draft/draft-rows.js';
import { Button } from '../ui/button.js';
import { Group } from '../ui/group.js';
import { useWords } from '../words/use-words.js';
import { BLANK_SKIN, BLANK_STATION, drawableSkin, type SkinDraft } from './model-draft.js';
import type { PartKindName } from './part-kinds.js';
import { SkinFigure } from './skin-figure.js';

interface SkinFieldsProps {
  readonly kind: PartKindName;
  readonly skin: SkinDraft | undefined;
}

/** The skin of a part, girth by station, beside its drawing; every model has the skin of its hull molding. */
export const SkinFields = ({ kind, skin }: SkinFieldsProps) => {
  const { t, term } = useWords();
  const fields = useDraftFields();
  const at = `/skins/${kind}`;
  if (skin === undefined)
    return (
      <div className="wide">
        <Button onPress={() => fields.put(at, BLANK_SKIN)}>{t('models.addSkin', { kind: term(kind) })}</Button>
      </div>
    );
  const dropSkin = (): void => {
    const { [kind]: _gone, ...rest } = fields.at('/skins') as Readonly<Record<string, SkinDraft>>;
    fields.put('/skins', rest);
  };
  const whole = drawableSkin(skin);
  return (
    <Group name={t('models.skinOf', { kind: term(kind) })}>
      <p className="note soft wide">{t('models.skinHint')}</p>
      <div className="skin-entry">
        <div>
          <div className="draft-row">
            <DraftInput at={`${at}/lengthMm`} kind="decimal" />
            <DraftInput at={`${at}/transom/halfWidthMm`} kind="decimal" />
            <DraftInput at={`${at}/transom/heightMm`} kind="decimal" />
          </div>
          <DraftRows
            at={`${at}/stations`}
            name={t('models.stationRows', { kind: term(kind) })}
            blank={BLANK_STATION}
            add={t('models.addStation')}
            drop={(number) => t('models.dropStation', { number })}
            least={2}
          >
            {(row) => (
              <>
                <DraftInput at={`${row}/xMm`} kind="decimal" />
                <DraftInput at={`${row}/edgeGirthMm`} kind="decimal" />
                <DraftInput at={`${row}/chineGirthMm`} kind="decimal" />
                <DraftInput at={`${row}/waterlineGirthMm`} kind="decimal" />
              </>
            )}
          </DraftRows>
          {kind === 'hull molding' ? null : (
            <Button onPress={dropSkin}>{t('models.dropSkin', { kind: term(kind) })}</Button>
          )}
        </div>
        {whole === null ? <p className="empty">{t('models.drawnLater')}</p> : <SkinFigure kind={kind} skin={whole} />}
      </div>
    </Group>
  );
};
