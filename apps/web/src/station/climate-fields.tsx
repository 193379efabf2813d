import type { MarginRule } from '@hull-record/trade';
import type { NowLayer } from '../day/now.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { MeasureField } from '../ui/measure-field.js';
import { unitSign } from '../words/figures.js';
import { converted } from '../words/measures.js';
import { useWords } from '../words/use-words.js';
import { climateOf, judgeClimateTyped, type ClimateJudged, type ClimateTyped } from './climate-typed.js';

interface ClimateFieldsProps {
  readonly typed: ClimateTyped;
  readonly unit: 'C' | 'F';
  readonly layer: NowLayer;
  readonly rule: MarginRule;
  readonly onChange: (typed: ClimateTyped) => void;
}

/** The climate that a layer was made in, with the verdict at once: by the limits of the layer, and by the dew point. */
export const ClimateFields = ({ typed, unit, layer, rule, onChange }: ClimateFieldsProps) => {
  const { t } = useWords();
  const field = (name: keyof ClimateTyped, label: string) => (
    <MeasureField label={label} value={typed[name]} onChange={(value) => onChange({ ...typed, [name]: value })} />
  );
  const sign = unitSign(unit);
  const climate = climateOf(typed, unit);
  return (
    <Fold summary={t('climate.title')} className="st-fold">
      <div className="st-fields">
        {field('air', t('climate.air', { unit: sign }))}
        {field('humidity', t('climate.humidity'))}
        {field('mold', t('climate.mold', { unit: sign }))}
      </div>
      <div role="status">
        {climate === undefined ? null : (
          <Verdicts
            judged={judgeClimateTyped(climate, layer.scheduled.climate, rule)}
            layer={layer}
            unit={unit}
            rule={rule}
          />
        )}
      </div>
    </Fold>
  );
};

interface VerdictsProps extends Pick<ClimateFieldsProps, 'layer' | 'unit' | 'rule'> {
  readonly judged: ClimateJudged;
}

const Verdicts = ({ judged: { air, humidity, margin }, layer, unit, rule }: VerdictsProps) => {
  const { t, figure, limits } = useWords();
  const { airTemperature, relativeHumidity } = layer.scheduled.climate ?? {};
  const asked = rule.replace(' ', ' °');
  // A margin is a difference of temperatures: it has the size of a degree, and not its zero.
  const difference = (celsius: number): string => figure(unit === 'C' ? celsius : (celsius * 9) / 5, 2);
  return (
    <ul className="plain st-say">
      {air === null || airTemperature === undefined ? null : (
        <li>{mark(air === 'inside' ? 'inside' : 'outside', `${t(`climate.air.${air}`)} ${limits(airTemperature)}`)}</li>
      )}
      {humidity === null || relativeHumidity === undefined ? null : (
        <li>
          {mark(
            humidity === 'inside' ? 'inside' : 'outside',
            `${t(`climate.humidity.${humidity}`)} ${limits(relativeHumidity)}`,
          )}
        </li>
      )}
      <li>
        {margin === null
          ? mark('none', t('climate.needsThree'))
          : mark(
              margin.enough ? 'inside' : 'outside',
              t(margin.enough ? 'climate.enough' : 'climate.tooSmall', {
                margin: difference(margin.marginC),
                dewPoint: figure(unit === 'C' ? margin.dewPointC : converted(margin.dewPointC, 'C', unit), 3),
                unit: unitSign(unit),
                asked,
              }),
            )}
      </li>
    </ul>
  );
};
