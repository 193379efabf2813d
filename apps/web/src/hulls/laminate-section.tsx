import type { MaterialView, PartView } from '@hull-record/contracts';
import { getRouteApi } from '@tanstack/react-router';
import { layerHatch } from '../marks/layer-hatch.js';
import { LaminateBand } from '../record/laminate-band.js';
import { Verdicts } from '../record/verdicts.js';
import { Button } from '../ui/button.js';
import { Empty } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { LayerRecord } from './layer-record.js';
import { LayerState } from './layer-state.js';
import { LayerWords } from './layer-words.js';
import { Readings } from './readings.js';
import { UsedList } from './used.js';

type Layer = PartView['layers'][number];

const route = getRouteApi('/hulls/$number');

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
  const { layer: asked = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const open = (code: string | null): void =>
    void navigate({ search: code === null ? {} : { layer: `${number}/${code}` }, replace: true, resetScroll: false });
  const opened = layers.find(({ scheduled }) => asked === `${number}/${scheduled.code}`);
  const columns: readonly Column<Layer>[] = [
    {
      head: t('hulls.section'),
      cell: (layer) => (
        <>
          <Band layer={layer} materials={materials} opened={layer === opened} />
          <Button
            className="band-button"
            label={t('hulls.openBand', { layer: layer.scheduled.name })}
            onPress={() => open(layer.scheduled.code)}
          >
            {null}
          </Button>
        </>
      ),
      class: 'band',
    },
    {
      head: t('record.layer'),
      cell: (layer) => (
        <>
          <LayerWords layer={layer} />
          <Button className="in-text" onPress={() => open(layer.scheduled.code)}>
            {t('hulls.openRecord', { layer: layer.scheduled.code })}
          </Button>
        </>
      ),
      names: true,
    },
    { head: t('hulls.lotsUsed'), cell: ({ record }) => (record === null ? '–' : <UsedList used={record.used} />) },
    { head: t('readings.head'), cell: (layer) => <ReadAndJudged layer={layer} /> },
    { head: t('record.state'), cell: (layer) => <LayerState layer={layer} layers={layers} /> },
  ];
  if (layers.length === 0) return <Empty>{t('hulls.noLayers')}</Empty>;
  return (
    <>
      <Table caption={t('hulls.laminate', { part: number })} columns={columns} rows={layers} className="laminate" />
      <p className="note soft">{t('hulls.notToScale')}</p>
      {opened === undefined ? null : <LayerRecord layer={opened} onClose={() => open(null)} />}
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
  readonly opened: boolean;
}

const Band = ({ layer: { scheduled, record }, materials, opened }: BandProps) => {
  const { t } = useWords();
  const hatch = layerHatch(scheduled, materials);
  const state = record === null ? t('hulls.toCome') : t('hulls.made');
  const words = t('hulls.band', { layer: scheduled.name, hatch: t(`hatch.${hatch}`), state });
  return <LaminateBand hatch={hatch} words={words} isLater={record === null} isOpened={opened} />;
};
