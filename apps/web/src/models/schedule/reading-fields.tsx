import { READING_KINDS_OF_THE_SHOP } from '@hull-record/trade';
import { useDraftFields } from '../../entry/draft/draft-context.js';
import { DraftInput } from '../../entry/draft/draft-input.js';
import { FieldInput } from '../../entry/field-input.js';
import { unitSign } from '../../words/figures.js';
import { useWords } from '../../words/use-words.js';
import type { LayerDraft } from './schedule-draft.js';
import { unitFor, unitsOf } from './units-of.js';

type Reading = LayerDraft['readings'][number];

const KINDS = Object.entries(READING_KINDS_OF_THE_SHOP)
  .filter(([, { on }]) => (on as readonly string[]).includes('layer'))
  .map(([kind]) => kind);

/** A reading that a layer asks for: what, how many spots, within which limits, and who says so. */
export const ReadingFields = ({ at }: { readonly at: string }) => {
  const { t, term } = useWords();
  const fields = useDraftFields();
  const reading = fields.at(at) as Reading;
  const { what, limits } = reading;
  const kinds = what === '' || KINDS.includes(what) ? KINDS : [...KINDS, what];
  return (
    <>
      <FieldInput
        of={{
          ...{ name: `${at}/what`, label: fields.labelOf(`${at}/what`) ?? '', kind: 'choice' },
          options: kinds.map((kind) => [kind, term(kind)]),
        }}
        value={what}
        wrong={fields.wrongAt(`${at}/what`)}
        onChange={(next) =>
          fields.put(at, { ...reading, what: next, limits: { ...limits, unit: unitFor(next, limits.unit) } })
        }
      />
      <DraftInput at={`${at}/spots`} kind="decimal" />
      <DraftInput at={`${at}/limits/min`} kind="decimal" />
      <DraftInput at={`${at}/limits/max`} kind="decimal" />
      <DraftInput
        at={`${at}/limits/unit`}
        kind="choice"
        options={unitsOf(what).map((unit) => [unit, unitSign(unit)])}
      />
      <DraftInput at={`${at}/where`} kind="words" />
      <DraftInput at={`${at}/source`} kind="words" hint={t('schedule.sourceHint')} />
    </>
  );
};
