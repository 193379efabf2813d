import type { Taken } from '@hull-record/contracts';
import type { Touches } from './lanes.js';
import { GUNS, type DemoGun } from './plan/guns.js';
import type { Step } from './plan/step.js';

/** Stands for everything: who changes it goes alone. */
const ALL = 'all';

/** Acts that may touch anything that is recorded. */
const ALONE = /^(register(?!Owner)|set(?!Gun)|publish|correct$|importClimate$|openCase$|freezeCase$)/;

/** Hulls that a step is about: its name, or the code of its bucket or kit, says which. */
const hullsIn = (name: string): readonly string[] => [
  ...[...name.matchAll(/TS(\d{2})-(\d{3})/g)].map(([, model, number]) => `hull ${model ?? ''}${number ?? ''}`),
  ...[...name.matchAll(/\b[BK]-(\d{5})-/g)].map(([, serial]) => `hull ${serial ?? ''}`),
];

const usesOf = ({ lot, tank, gun }: Taken): readonly string[] => [
  ...(lot === undefined ? [] : [`lot ${lot}`]),
  ...(tank === undefined ? [] : [`tank ${tank}`]),
  ...(gun === undefined ? [] : [`gun ${gun}`, ...tankOf(gun)]),
];

const tankOf = (gun: string): readonly string[] => {
  const { tank } = (GUNS as Readonly<Record<string, DemoGun>>)[gun] ?? {};
  return tank === undefined ? [] : [`tank ${tank}`];
};

/** What a step of the demo has to do with others: hulls, lots, tanks, guns and molds. */
export const touchesOf = ({ act, name, of = '', body }: Step): Touches => {
  if (ALONE.test(act)) return { uses: [], changes: [ALL] };
  const taken = [body['used'], body['inputs']].flatMap((each) => (each as readonly Taken[] | undefined) ?? []);
  const made = ['receiveLot', 'makeMix', 'cutKit'].includes(act) ? [`lot ${String(body['code'])}`] : [];
  const named: Readonly<Record<string, readonly string[]>> = {
    ...{ changeLotState: [`lot ${of}`], fillTank: [`tank ${of}`], careForMold: [`mold ${of}`] },
    ...{ setGun: [`gun ${of}`], hookUpGun: [`gun ${of}`], checkEquipment: [`check ${of}`] },
  };
  const checked = /^catch (\S+) conceded$/.exec(name);
  const hooked = act === 'hookUpGun' ? usesOf(body as unknown as Taken) : [];
  return {
    uses: [ALL, ...taken.flatMap(usesOf), ...hooked],
    changes: [...hullsIn(name), ...made, ...(named[act] ?? []), ...(checked ? [`check ${checked[1] ?? ''}`] : [])],
  };
};
