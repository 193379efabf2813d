import { unitSign } from '../words/figures.js';
import { isUnit } from '@hull-record/trade';
import { useState } from 'react';
import type { NowLayer, NowPart, NowRecord } from '../day/now.js';
import { verdictOf } from '../day/with-entries.js';
import { spotsOf } from '../day/work-of.js';
import { queueEntry } from '../outbox/queue-entry.js';
import { Acts } from '../station-frame/station-page.js';
import { useKeep } from '../station-frame/use-keep.js';
import { Button } from '../ui/button.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { FilmKeys } from './film-keys.js';
import { NumberPad } from './number-pad.js';
import { SpotStrip } from './spot-strip.js';
import { useGauge } from './use-gauge.js';
import { VerdictPanel, type Entered } from './verdict-panel.js';

type Required = NowLayer['scheduled']['readings'][number];

interface TakeReadingsProps {
  readonly part: NowPart;
  readonly layer: NowLayer;
  readonly record: NowRecord;
  readonly required: Required;
}

/** Reads one kind at its spots: inside is kept at once and goes on to the next; outside asks to read again or keep it. */
export const TakeReadings = ({ part, layer, record, required }: TakeReadingsProps) => {
  const { t, plain, limits: limitWords } = useWords();
  const { what, spots: asked, limits, where } = required;
  const unit = limits.unit;
  const [gauge] = useGauge(what);
  const [typed, setTyped] = useState('');
  const [again, setAgain] = useState<NowRecord['readings'][number] | null>(null);
  const [entered, setEntered] = useState<{ spot: number; reading: Entered; kept: boolean } | null>(null);
  const { keep, busy, note } = useKeep();
  const spots = spotsOf(record, what);
  const spot = again?.spot ?? firstMissing(spots.map((each) => each.spot));

  const keepReading = async (reading: Entered): Promise<void> => {
    const { value, below } = reading;
    const measured = below === null ? { value } : { lastWet: value, nextDry: below };
    const done = await keep(() =>
      queueEntry(
        '/api/layers/:layer/readings',
        { layer: record.id },
        {
          ...{ what, unit: isUnit(reading.unit) ? reading.unit : unit },
          ...(gauge === null ? {} : { equipment: gauge }),
          spots: [{ ...measured, ...(again === null ? {} : { readsAgain: again.id }) }],
        },
        {
          lanes: [part.number],
          about: `${part.number}, ${layer.scheduled.code}`,
          detail: `${plain(value)} ${unitSign(reading.unit)}`,
        },
      ),
    );
    if (!done) return;
    setEntered({ spot, reading, kept: true });
    setAgain(null);
    setTyped('');
  };
  const judge = (reading: Entered): void => {
    const verdict = verdictOf(reading.value, reading.below, reading.unit, limits);
    if (verdict === 'outside') setEntered({ spot, reading, kept: false });
    else void keepReading(reading);
  };
  const isFilm = what === 'wet film';
  const asks = entered !== null && !entered.kept;

  return (
    <>
      <SpotStrip spots={spots} asked={asked} current={spot} onAgain={setAgain} />
      {entered === null ? null : (
        <VerdictPanel entered={entered.reading} what={what} spot={entered.spot} limits={limits} />
      )}
      {asks ? (
        <Acts>
          <Button className="btn do" onPress={() => setEntered(null)}>
            {t('read.readAgain', { spot })}
          </Button>
          <Button busy={busy} onPress={() => void keepReading(entered.reading)}>
            {t('read.keepIt')}
            <small>{t('read.toQuality')}</small>
          </Button>
        </Acts>
      ) : (
        <>
          <p className="st-ask">
            <b>{t('read.askSpot', { spot, asked })}</b> <span>{limitWords(limits)}</span>{' '}
            {where === undefined ? null : <Said text={where} />}
          </p>
          {isFilm ? (
            <FilmKeys
              limits={limits}
              onTooth={({ last, next }, gaugeUnit) =>
                judge({ value: String(last), below: String(next), unit: gaugeUnit })
              }
            />
          ) : (
            <NumberPad
              typed={typed}
              unit={unitSign(unit)}
              onChange={setTyped}
              onEnter={() => (/\d/.test(typed) ? judge({ value: tidy(typed), below: null, unit }) : undefined)}
            />
          )}
        </>
      )}
      {note}
    </>
  );
};

const firstMissing = (taken: readonly number[]): number => {
  let next = 1;
  while (taken.includes(next)) next += 1;
  return next;
};

/** As a plain decimal: ".5" is 0.5, and "36." is 36. */
const tidy = (typed: string): string => typed.replace(/^\./, '0.').replace(/\.$/, '');
