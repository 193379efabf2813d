import type { EntityManager } from 'typeorm';
import { bondOf, layUpTimes, toSi, type LayUpTimes, type LayUpWindow } from '@hull-record/trade';
import type { Fact } from '../facts/fact.js';
import { standing } from '../facts/standing.js';
import { judgeAlone, keepVerdicts, type Found } from '../verdicts/keep-verdict.js';
import { materialsIn, type MaterialIn } from './materials-in.js';

export const LAY_UP = 'lay-up window';

/** A layer of a part as made, with the window that its schedule gives for the next. */
interface Made {
  readonly root: string;
  readonly code: string;
  readonly name: string;
  readonly predecessors: readonly string[];
  readonly startedAt: Date;
  readonly endedAt: Date;
  readonly window: LayUpWindow | null;
  readonly prepared: string | null;
}

const MADE = `
  select r.root, y.code, y.name, y.predecessors, r.started_at as "startedAt", r.ended_at as "endedAt",
    y.lay_up_window as window, r.surface_prepared as prepared
  from fact.layer_record r join fact.schedule_layer y on y.id = r.schedule_layer_id
  where r.part_id = $1 and ${standing('r')} order by r.started_at, r.root`;

const USED = `select u.lot_id as lot, u.kg from fact.used u where u.into_id = $1 and ${standing('u')}`;

/** When the next layer bonds to one that was made, and who says so. */
export interface NextLayer {
  readonly times: LayUpTimes;
  readonly source: string;
}

/**
 * The window of each layer of a part that was made, by the root of its record: what its schedule gives, else what the
 * data sheet of the gel coat or resin gave that most of it is. No window is known of the others.
 */
export const windowsOf = async (tx: EntityManager, partId: string): Promise<ReadonlyMap<string, NextLayer>> =>
  windowsOfMade(tx, await tx.query<Made[]>(MADE, [partId]));

const windowsOfMade = async (tx: EntityManager, layers: readonly Made[]): Promise<ReadonlyMap<string, NextLayer>> => {
  const windows = new Map<string, NextLayer>();
  for (const made of layers) {
    const found = await windowOf(tx, made);
    if (found) windows.set(made.root, found);
  }
  return windows;
};

const windowOf = async (tx: EntityManager, { root, endedAt, window }: Made): Promise<NextLayer | undefined> => {
  const ended = endedAt.getTime();
  if (window) return { times: layUpTimes(ended, window), source: 'Window of the laminate schedule.' };
  const used = await tx.query<{ lot: string; kg: number }[]>(USED, [root]);
  const materials = used.length === 0 ? [] : await materialsIn(tx, used, endedAt);
  const main = materials.find(({ role }) => role === 'gel coat' || role === 'resin');
  const minutes = main && minutesOf(main);
  return (
    minutes && {
      times: layUpTimes(ended, minutes),
      source: main.makerData.dataSheet ?? `Data of ${main.name} as registered.`,
    }
  );
};

/** Of a sheet that names no latest time the next layer is never too late. */
const NEVER = 1e7;

const minutesOf = ({ makerData: { layUpWindow: window } }: MaterialIn): LayUpWindow | undefined =>
  window && {
    earliestMinutes: window.min === undefined ? 0 : toSi(window.min, window.unit) / 60,
    latestMinutes: window.max === undefined ? NEVER : toSi(window.max, window.unit) / 60,
  };

/**
 * Judges how each layer of a part bonds to those before it: too early, within the window, or after it, when it is glued
 * to a cured layer: a secondary bond, whose surface is prepared first, and that is recorded.
 *
 * @param changed roots of the layers that changed: they and those that go on them are judged; all, when it is left out
 */
export const judgeLayUp = async (fact: Fact, partId: string, changed?: ReadonlySet<string>): Promise<void> => {
  await judgeAlone(fact, LAY_UP, partId);
  const layers = await fact.tx.query<Made[]>(MADE, [partId]);
  const judged = touchedBy(changed, layers).map((layer) => ({ layer, before: beforeOf(layer, layers) }));
  const windows = await windowsOfMade(fact.tx, [...new Set(judged.flatMap(({ before }) => before))]);
  for (const { layer, before } of judged) {
    const bonds = before.flatMap((under) => {
      const window = windows.get(under.root);
      return window ? [bond(layer, under, window)] : [];
    });
    const worst = bonds.find(({ verdict }) => verdict === 'outside') ?? bonds.at(-1);
    const about = { aboutKind: 'layer', aboutId: layer.root, partId };
    await keepVerdicts(fact, about, [LAY_UP], worst ? [worst] : []);
  }
};

const beforeOf = (layer: Made, layers: readonly Made[]): readonly Made[] =>
  layers.filter(({ code, startedAt }) => layer.predecessors.includes(code) && startedAt <= layer.startedAt);

const touchedBy = (changed: ReadonlySet<string> | undefined, layers: readonly Made[]): readonly Made[] => {
  if (changed === undefined) return layers;
  const codes = layers.filter(({ root }) => changed.has(root)).map(({ code }) => code);
  return layers.filter(
    ({ root, predecessors }) => changed.has(root) || codes.some((code) => predecessors.includes(code)),
  );
};

const minutesAfter = (from: Date, at: number): number => Math.round((at - from.getTime()) / 6_000) / 10;

const bond = (layer: Made, under: Made, { times, source }: NextLayer): Found => {
  const kind = bondOf(layer.startedAt.getTime(), times);
  const waited = minutesAfter(under.endedAt, layer.startedAt.getTime());
  const [earliest, latest] = [minutesAfter(under.endedAt, times.earliest), minutesAfter(under.endedAt, times.latest)];
  const found = {
    topic: LAY_UP,
    figures: { bond: kind, waitedMinutes: waited, earliestMinutes: earliest, latestMinutes: latest },
    rule: 'Begun between the earliest and the latest time after the layer before ended; later is a secondary bond.',
    source,
  };
  const window = `${earliest} to ${latest} min after ${under.name}`;
  if (kind === 'primary')
    return { ...found, verdict: 'inside', detail: `Begun ${waited} min after ${under.name}; window ${window}.` };
  if (kind === 'too early') {
    const detail = `${layer.name} was begun ${waited} min after ${under.name}: too early; window ${window}.`;
    return { ...found, verdict: 'outside', detail, breaks: 'lay-up-too-early' };
  }
  const late = `${layer.name} was begun ${waited} min after ${under.name}, past its window (${window}): a secondary bond`;
  if (layer.prepared !== null)
    return { ...found, verdict: 'outside', detail: `${late}. Surface prepared: ${layer.prepared}` };
  return {
    ...found,
    verdict: 'outside',
    detail: `${late}, and no preparation of the surface is recorded.`,
    breaks: 'lay-up-window-passed',
  };
};
