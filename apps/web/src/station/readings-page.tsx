import { getRouteApi, useNavigate } from '@tanstack/react-router';
import { useDay } from '../day/use-day.js';
import type { Day } from '../day/now.js';
import { Acts, StationPage } from '../station-frame/station-page.js';
import { Button } from '../ui/button.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { DayState } from './day-state.js';
import { GaugeChoice } from './gauge-choice.js';
import { LayerBands } from './layer-bands.js';
import { NextWindow } from './next-window.js';
import { TakeReadings } from './take-readings.js';
import { WorkList } from './work-list.js';

const route = getRouteApi('/station/readings');

/** Where readings are taken, spot by spot; without a part in the address, where one is chosen. */
export const ReadingsPage = () => {
  const { t } = useWords();
  const day = useDay();
  const { part, layer, what } = route.useSearch();
  if (part === undefined || layer === undefined || what === undefined)
    return (
      <StationPage title={t('read.title')} name={t('read.title')}>
        <DayState of={day}>
          {(now) => <WorkList day={now} only={['read', 'read again']} empty={t('read.nothing')} />}
        </DayState>
      </StationPage>
    );
  return <DayState of={day}>{(now) => <Reading day={now} part={part} layer={layer} what={what} />}</DayState>;
};

interface ReadingProps {
  readonly day: Day;
  readonly part: string;
  readonly layer: string;
  readonly what: string;
}

const Reading = ({ day, part: number, layer: code, what }: ReadingProps) => {
  const { t } = useWords();
  const navigate = useNavigate();
  const part = day.parts.find((each) => each.number === number);
  const layer = part?.layers.find(({ scheduled }) => scheduled.code === code);
  const required = layer?.scheduled.readings.find((each) => each.what === what);
  if (!part || !layer?.record || !required)
    return (
      <StationPage title={t('read.title')} name={number} isCode>
        <p className="st-say">{t('read.done')}</p>
        <Acts>
          <Button className="btn do" onPress={() => void navigate({ to: '/station' })}>
            {t('station.start')}
          </Button>
        </Acts>
      </StationPage>
    );
  return (
    <StationPage
      title={t('read.title')}
      over={<Term word={what} />}
      name={part.hull ?? part.number}
      isCode
      side={
        <>
          <p>
            <b className="n">{code}</b> <Said text={layer.scheduled.name} />
          </p>
          <GaugeChoice what={what} gauges={day.gauges} />
        </>
      }
    >
      <TakeReadings
        key={`${number} ${code} ${what}`}
        part={part}
        layer={layer}
        record={layer.record}
        required={required}
      />
      <LayerBands part={part} current={code} materials={day.materials} />
      <NextWindow part={part} layer={layer} />
    </StationPage>
  );
};
