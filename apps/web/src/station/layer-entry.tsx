import { useNavigate } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import type { Day, NowLayer, NowPart } from '../day/now.js';
import { propose, type Line } from '../day/propose.js';
import { stopsOfLayer, stopsOfLot, type Stop } from '../day/stops-of.js';
import { useNow } from '../day/use-day.js';
import { isNext } from '../day/work-of.js';
import { clock } from '../device/clock.js';
import { plantDay } from '../device/plant-day.js';
import { usePreferences } from '../preferences/use-preferences.js';
import { Acts, StationPage } from '../station-frame/station-page.js';
import { useHolder } from '../station-frame/use-holder.js';
import { useKeep } from '../station-frame/use-keep.js';
import { Button } from '../ui/button.js';
import { Toggle } from '../ui/toggle.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { BeganChoice } from './began-choice.js';
import { ClimateFields } from './climate-fields.js';
import { climateOf, NO_CLIMATE } from './climate-typed.js';
import { CrewChoice } from './crew-choice.js';
import { GoOn } from './go-on.js';
import { keepLayer } from './keep-layer.js';
import { LayerDone } from './layer-done.js';
import { rulesToLift } from './rules-to-lift.js';
import { LayerBands } from './layer-bands.js';
import { MaterialLines } from './material-lines.js';
import { StopPanel } from './stop-panel.js';
import { toTaken } from './to-taken.js';
import { useCheck } from './use-check.js';

interface LayerEntryProps {
  readonly day: Day;
  readonly part: NowPart;
  readonly layer: NowLayer;
}

/** One layer on one or several parts: as scheduled in one touch, or with what differs. */
export const LayerEntry = ({ day, part, layer }: LayerEntryProps) => {
  const { t } = useWords();
  const holder = useHolder();
  const navigate = useNavigate();
  const { keep, busy, note } = useKeep();
  const code = layer.scheduled.code;
  const [chosen, setChosen] = useState<readonly string[]>([part.number]);
  const [began, setBegan] = useState<number | null>(null);
  const [changed, setChanged] = useState<readonly Line[] | null>(null);
  const [anyway, setAnyway] = useState(false);
  const [done, setDone] = useState(false);
  const [lost, setLost] = useState(0);
  const now = useNow();
  const today = plantDay(now);
  const others = day.parts.filter((other) => isLike(part, other, code));
  const lines = useMemo(
    () => changed ?? propose(day, layer, chosen.length, today),
    [changed, day, layer, chosen, today],
  );
  const [crewChosen, setCrew] = useState<readonly string[] | null>(null);
  const [climateTyped, setClimate] = useState(NO_CLIMATE);
  const unit = useTemperatureUnit(layer);
  const climate = climateOf(climateTyped, unit);
  const crew = crewChosen ?? (holder === null ? [] : [holder.badge]);
  const used = lines.flatMap(toTaken);
  const times = (minutes: number) => ({
    startedAt: new Date(clock.now() - minutes * 60_000).toISOString(),
    endedAt: clock.instant(),
  });
  const made = { layer: code, doneBy: [...crew], used, ...(climate === undefined ? {} : { climate }) };
  const service = useCheck(done ? [] : chosen, { ...made, ...times(began ?? 0) }, [
    code,
    JSON.stringify([used, climate]),
  ]);
  const here = stopsHere(day, others, chosen, lines, code, now, today);
  const stopped = !done && !anyway && here.length + service.length > 0;

  const save = async (): Promise<void> => {
    if (began === null || crew.length === 0 || lacksLooks(lines)) return;
    const parts = chosen.map((number) => ({ part: number, weight: 1 }));
    const body = { ...made, ...times(began), parts };
    const about = { lanes: chosen, about: `${chosen.join(', ')}, ${code}` };
    if (await keep(async () => setLost(await keepLayer(body, lines, about)))) setDone(true);
  };
  const toggle = (number: string): void => {
    setChanged(null);
    setChosen((before) => (before.includes(number) ? before.filter((each) => each !== number) : [...before, number]));
  };
  return (
    <StationPage
      title={t('lay.title')}
      over={t('lay.title')}
      name={part.hull ?? part.number}
      isCode
      side={
        <p>
          <b className="n">{code}</b> <Said text={layer.scheduled.name} />
        </p>
      }
    >
      {done ? (
        <>
          <LayerDone part={part} layer={layer} note={note} />
          {lost === 0 ? null : (
            <p className="wrong" role="alert">
              {t('lay.photosLost', { count: lost })}
            </p>
          )}
        </>
      ) : (
        <>
          {others.length > 1 ? (
            <div className="st-parts" role="group" aria-label={t('lay.parts')}>
              {others.map(({ number }) => (
                <Toggle key={number} on={chosen.includes(number)} onChange={() => toggle(number)}>
                  <span className="n">{number}</span>
                </Toggle>
              ))}
            </div>
          ) : null}
          <MaterialLines day={day} layer={layer} lines={lines} today={today} onChange={setChanged} />
          <ClimateFields typed={climateTyped} unit={unit} layer={layer} rule={day.marginRule} onChange={setClimate} />
          <CrewChoice people={day.people} crew={crew} onChange={setCrew} />
          {stopped ? <StopPanel here={here} service={service} /> : null}
          {stopped ? (
            <GoOn rules={rulesToLift(here, service)} parts={chosen} layer={code} onGone={() => setAnyway(true)} />
          ) : null}
          {stopped ? (
            <Acts>
              <Button onPress={() => setAnyway(true)}>
                {t('lay.happened')}
                <small>{t('read.toQuality')}</small>
              </Button>
              <Button className="btn do" onPress={() => void navigate({ to: '/station' })}>
                {t('lay.notDone')}
              </Button>
            </Acts>
          ) : (
            <>
              <BeganChoice began={began} onChange={setBegan} />
              {note}
              <Acts>
                <Button
                  className={
                    began === null || chosen.length === 0 || crew.length === 0 || lacksLooks(lines)
                      ? 'btn st-refuses'
                      : 'btn do'
                  }
                  busy={busy}
                  onPress={() => void save()}
                >
                  {t(changed === null ? 'lay.keepScheduled' : 'lay.keep', { count: chosen.length })}
                  <small>{whatLacks(began, crew, lines, t)}</small>
                </Button>
              </Acts>
            </>
          )}
        </>
      )}
      <LayerBands part={part} current={code} materials={day.materials} />
    </StationPage>
  );
};

type Say = ReturnType<typeof useWords>['t'];

/** What is still to be said before it is kept, or who made it. */
const whatLacks = (began: number | null, crew: readonly string[], lines: readonly Line[], t: Say): string => {
  if (lacksLooks(lines)) return t('lay.sayLooks');
  if (began === null) return t('lay.sayBegan');
  return crew.length === 0 ? t('lay.sayWho') : t('lay.by', { by: crew.join(', ') });
};

/** What nobody can name is told by its looks, or nothing is told of it. */
const lacksLooks = (lines: readonly Line[]): boolean =>
  lines.some(({ source }) => source?.unnamed?.looks.trim() === '');

/** Temperatures are typed in the unit that the person chose, else in that of the layer's limits. */
const useTemperatureUnit = ({ scheduled }: NowLayer): 'C' | 'F' => {
  const [{ temperature }] = usePreferences();
  if (temperature !== 'recorded') return temperature;
  return scheduled.climate?.airTemperature?.unit === 'F' ? 'F' : 'C';
};

/** Parts of the same model and kind that are ready for the same layer. */
const isLike = (part: NowPart, other: NowPart, code: string): boolean => {
  if (other.number === part.number) return true;
  const layer = other.layers.find(({ scheduled }) => scheduled.code === code);
  return other.model === part.model && other.kind === part.kind && layer !== undefined && isNext(other, layer);
};

const stopsHere = (
  day: Day,
  parts: readonly NowPart[],
  chosen: readonly string[],
  lines: readonly Line[],
  code: string,
  now: number,
  today: string,
): readonly Stop[] =>
  parts
    .filter(({ number }) => chosen.includes(number))
    .flatMap((part) => {
      const layer = part.layers.find(({ scheduled }) => scheduled.code === code);
      if (layer === undefined) return [];
      const lots = lines.flatMap(({ source }) => day.lots.find((lot) => lot.code === source?.code) ?? []);
      const unnamed = lines.some(({ source }) => source?.unnamed !== undefined);
      return [
        ...stopsOfLayer(part, layer, now),
        ...lots.flatMap((lot) => stopsOfLot(lot, layer, today)),
        ...(unnamed ? [{ rule: 'unidentified' as const, about: code, detail: '' }] : []),
      ];
    });
