import type { MaterialView, ScheduleView } from '@hull-record/contracts';
import { layerHatch } from '../marks/layer-hatch.js';
import { LaminateBand } from '../record/laminate-band.js';
import { ScheduledWords } from '../record/scheduled-words.js';
import { Table, type Column } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import type { LayerField } from './changes.js';
import { useLayerWords } from './use-layer-words.js';

type Layer = ScheduleView['layers'][number];

interface ScheduleSectionProps {
  readonly schedule: ScheduleView;
  readonly materials: readonly MaterialView[];
}

/** A version of a laminate schedule as a section, outside in: drawn as the laminate of a part is on the page of its hull. */
export const ScheduleSection = ({ schedule: { partKind, version, layers }, materials }: ScheduleSectionProps) => {
  const { t, term } = useWords();
  const columns: readonly Column<Layer>[] = [
    {
      head: t('hulls.section'),
      cell: (layer) => {
        const hatch = layerHatch(layer, materials);
        return (
          <LaminateBand hatch={hatch} words={t('models.band', { layer: layer.name, hatch: t(`hatch.${hatch}`) })} />
        );
      },
      class: 'band',
    },
    {
      head: t('record.layer'),
      cell: (layer) => <ScheduledWords layer={layer} demand={layer.demand} isBold />,
      names: true,
    },
    {
      head: t('models.materials'),
      cell: (layer) => <Said of={layer} fields={['materials', 'lossAllowance', 'areaM2', 'laminate']} />,
    },
    { head: t('models.asked'), cell: (layer) => <Said of={layer} fields={['readings', 'climate']} /> },
    {
      head: t('models.order'),
      cell: (layer) => (
        <Said of={layer} fields={['predecessors', 'layUpWindow', 'holdPoint']} none={t('models.first')} />
      ),
    },
  ];
  return (
    <>
      <Table
        caption={t('models.section', { kind: term(partKind), version })}
        columns={columns}
        rows={layers}
        className="laminate"
      />
      <p className="note soft">{t('models.notToScale')}</p>
    </>
  );
};

interface SaidProps {
  readonly of: Layer;
  readonly fields: readonly LayerField[];
  /** Said where the first field says nothing. */
  readonly none?: string;
}

const Said = ({ of, fields: [first, ...rest], none }: SaidProps) => {
  const say = useLayerWords();
  const begins = first === undefined ? [] : say(first, of);
  const all = [
    ...(begins.length === 0 && none !== undefined ? [none] : begins),
    ...rest.flatMap((field) => say(field, of)),
  ];
  if (all.length === 0) return '–';
  return (
    <ul className="plain close">
      {all.map((words, i) => (
        <li key={i}>{words}</li>
      ))}
    </ul>
  );
};
