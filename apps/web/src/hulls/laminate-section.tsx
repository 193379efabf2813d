import type { MaterialView, PartView } from '@hull-record/contracts';
import { layerHatch } from '../marks/layer-hatch.js';
import { Verdicts } from '../record/verdicts.js';
import { Empty } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { LayerState } from './layer-state.js';
import { LayerWords } from './layer-words.js';
import { Readings } from './readings.js';
import { UsedList } from './used.js';

type Layer = PartView['layers'][number];

interface LaminateSectionProps {
  readonly part: PartView;
  readonly materials: readonly MaterialView[];
}

/**
 * The laminate of a part as a section, outside in: one hatched band a layer, and beside it the layer's record.
 *
 * Bands are as high as their words, not to scale, and the drawing says so.
 */
export const LaminateSection = ({ part: { layers, number }, materials }: LaminateSectionProps) => {
  const { t } = useWords();
  const columns: readonly Column<Layer>[] = [
    { head: t('hulls.section'), cell: (layer) => <Band layer={layer} materials={materials} />, class: 'band' },
    { head: t('record.layer'), cell: (layer) => <LayerWords layer={layer} />, names: true },
    { head: t('hulls.lotsUsed'), cell: ({ record }) => (record === null ? '–' : <UsedList used={record.used} />) },
    { head: t('readings.head'), cell: (layer) => <ReadAndJudged layer={layer} /> },
    { head: t('record.state'), cell: (layer) => <LayerState layer={layer} layers={layers} /> },
  ];
  if (layers.length === 0) return <Empty>{t('hulls.noLayers')}</Empty>;
  return (
    <>
      <Table caption={t('hulls.laminate', { part: number })} columns={columns} rows={layers} className="laminate" />
      <p className="note soft">{t('hulls.notToScale')}</p>
    </>
  );
};

const ReadAndJudged = ({ layer: { record, scheduled } }: { readonly layer: Layer }) => (
  <>
    <Readings readings={record?.readings ?? []} required={scheduled.readings} />
    <Verdicts verdicts={record?.verdicts ?? []} />
  </>
);

interface BandProps {
  readonly layer: Layer;
  readonly materials: readonly MaterialView[];
}

const Band = ({ layer: { scheduled, record }, materials }: BandProps) => {
  const { t } = useWords();
  const hatch = layerHatch(scheduled, materials);
  const state = record === null ? t('hulls.toCome') : t('hulls.made');
  const words = t('hulls.band', { layer: scheduled.name, hatch: t(`hatch.${hatch}`), state });
  return (
    <svg className={record === null ? 'later' : 'full'} role="img" aria-label={words}>
      <rect width="100%" height="100%" fill={`url(#h-${hatch})`} />
      <rect className="edge" width="100%" height="100%" />
    </svg>
  );
};
