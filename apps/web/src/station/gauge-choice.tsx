import type { Day } from '../day/now.js';
import { Choice } from '../ui/choice.js';
import { useWords } from '../words/use-words.js';
import { useGauge } from './use-gauge.js';

interface GaugeChoiceProps {
  readonly what: string;
  readonly gauges: Day['gauges'];
}

const FIELDS = { gauge: 'gauge' } as const;

/** With which gauge it is read: asked once, and remembered on this tablet. */
export const GaugeChoice = ({ what, gauges }: GaugeChoiceProps) => {
  const { t } = useWords();
  const [gauge, choose] = useGauge(what);
  return (
    <Choice
      name={FIELDS.gauge}
      label={t('read.gauge')}
      value={gauge ?? ''}
      none={t('read.noGauge')}
      onChange={choose}
      options={gauges.map(({ code }) => [code, code] as const)}
    />
  );
};
