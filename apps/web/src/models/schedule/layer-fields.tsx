import type { MaterialView } from '@hull-record/contracts';
import { useEffect, useRef } from 'react';
import { AREAL_MASS_UNITS } from '@hull-record/trade';
import { AMOUNT_UNITS } from '../../entry/amount-fields.js';
import { DraftInput } from '../../entry/draft/draft-input.js';
import { DraftRows } from '../../entry/draft/draft-rows.js';
import { Group } from '../../ui/group.js';
import { unitSign } from '../../words/figures.js';
import { useWords } from '../../words/use-words.js';
import { LayerOrder } from './layer-order.js';
import { ReadingFields } from './reading-fields.js';
import { BLANK_MATERIAL, BLANK_PLY, BLANK_READING, type LayerDraft } from './schedule-draft.js';

interface LayerFieldsProps {
  readonly index: number;
  readonly layers: readonly LayerDraft[];
  readonly materials: readonly MaterialView[];
  /** A person asked for it: the eye and the keyboard go there. */
  readonly takesFocus: boolean;
}

const signs = (units: readonly string[]) => units.map((unit) => [unit, unitSign(unit)] as const);

/** Every field of one layer, group by group; each stands where the service points to when it finds it wrong. */
export const LayerFields = ({ index, layers, materials, takesFocus }: LayerFieldsProps) => {
  const { t } = useWords();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    if (takesFocus) heading.current?.focus();
  }, [takesFocus]);
  const at = `/layers/${index}`;
  const named = layers[index]?.code.trim() || t('schedule.unnamed');
  return (
    <div className="layer-fields" role="group" aria-labelledby="layer-edited">
      <h3 id="layer-edited" ref={heading} tabIndex={-1}>
        {t('schedule.editing', { number: index + 1, layer: named })}
      </h3>
      <Group name={t('schedule.g.layer')}>
        <DraftInput at={`${at}/code`} hint={t('schedule.codeHint')} />
        <DraftInput at={`${at}/name`} kind="words" />
        <DraftInput at={`${at}/zone`} kind="words" hint={t('schedule.zoneHint')} />
        <DraftInput at={`${at}/holdPoint`} kind="words" hint={t('schedule.holdPointHint')} />
      </Group>
      <Materials at={`${at}/materials`} materials={materials} />
      <Group name={t('schedule.g.plies')}>
        <DraftInput at={`${at}/plies`} kind="lines" />
        <DraftInput at={`${at}/areaM2`} kind="decimal" />
        <DraftInput at={`${at}/lossAllowance`} kind="decimal" hint={t('schedule.lossHint')} />
      </Group>
      <Plies at={`${at}/laminate`} count={layers[index]?.laminate.plies.length ?? 0} />
      <DraftRows
        at={`${at}/readings`}
        name={t('schedule.g.readings')}
        blank={BLANK_READING}
        add={t('schedule.addReading')}
        drop={(number) => t('schedule.dropReading', { number })}
      >
        {(row) => <ReadingFields at={row} />}
      </DraftRows>
      <Group name={t('schedule.g.climate')}>
        <DraftInput at={`${at}/climate/airTemperature/min`} kind="decimal" />
        <DraftInput at={`${at}/climate/airTemperature/max`} kind="decimal" />
        <DraftInput at={`${at}/climate/airTemperature/unit`} kind="choice" options={signs(['C', 'F'])} />
        <DraftInput at={`${at}/climate/relativeHumidity/min`} kind="decimal" />
        <DraftInput at={`${at}/climate/relativeHumidity/max`} kind="decimal" />
      </Group>
      <Group name={t('schedule.g.window')}>
        <DraftInput at={`${at}/layUpWindow/earliestMinutes`} kind="decimal" />
        <DraftInput at={`${at}/layUpWindow/latestMinutes`} kind="decimal" hint={t('schedule.latestHint')} />
      </Group>
      <LayerOrder index={index} layers={layers} />
    </div>
  );
};

interface MaterialsProps {
  readonly at: string;
  readonly materials: readonly MaterialView[];
}

const Materials = ({ at, materials }: MaterialsProps) => {
  const { t } = useWords();
  return (
    <DraftRows
      at={at}
      name={t('schedule.g.materials')}
      blank={BLANK_MATERIAL}
      add={t('schedule.addMaterial')}
      drop={(number) => t('schedule.dropMaterial', { number })}
      least={1}
    >
      {(row) => (
        <>
          <DraftInput
            at={`${row}/material`}
            kind="choice"
            options={materials.map(({ code, name }) => [code, `${code}, ${name}`])}
          />
          <DraftInput at={`${row}/target/quantity`} kind="decimal" />
          <DraftInput at={`${row}/target/unit`} kind="choice" options={signs(AMOUNT_UNITS)} />
        </>
      )}
    </DraftRows>
  );
};

const Plies = ({ at, count }: { readonly at: string; readonly count: number }) => {
  const { t } = useWords();
  return (
    <>
      <DraftRows
        at={`${at}/plies`}
        name={t('schedule.g.laminate')}
        blank={BLANK_PLY}
        add={t('schedule.addPly')}
        drop={(number) => t('schedule.dropPly', { number })}
      >
        {(row) => (
          <>
            <DraftInput at={`${row}/arealMass/value`} kind="decimal" />
            <DraftInput at={`${row}/arealMass/unit`} kind="choice" options={signs(AREAL_MASS_UNITS)} />
            <DraftInput at={`${row}/fibreMassFraction`} kind="decimal" />
          </>
        )}
      </DraftRows>
      {count === 0 ? null : <DraftInput at={`${at}/tolerance`} kind="decimal" hint={t('schedule.toleranceHint')} />}
    </>
  );
};
