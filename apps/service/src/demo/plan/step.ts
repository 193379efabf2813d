import type { z } from 'zod';
import { routes, type Amount, type Taken } from '@hull-record/contracts';
import { childId } from '../../platform/ids.js';
import type { GunCode } from './guns.js';
import type { MaterialCode } from './materials.js';
import { randomOf, type Random } from './random.js';

type Routes = typeof routes;

/** What the demo does, each by the name of the call that does the same over HTTP. */
export type ActName = Extract<
  keyof Routes,
  | (
      | 'registerPerson'
      | 'registerDevice'
      | 'registerEquipment'
      | 'registerDealer'
      | 'registerMaterial'
      | 'setPlantRules'
      | 'registerTank'
    )
  | ('registerModel' | 'publishSchedule' | 'registerMold' | 'receiveLot' | 'changeLotState' | 'fillTank' | 'makeMix')
  | ('cutKit' | 'startHull' | 'startPart' | 'recordLayer' | 'readLayer' | 'signHoldPoint' | 'joinPart' | 'assignHin')
  | ('setGun' | 'hookUpGun' | 'checkEquipment' | 'careForMold' | 'importClimate')
  | ('setWarrantyTerms' | 'fileClaim' | 'openCase' | 'freezeCase')
  | ('recordTouchUp' | 'judgeTouchUp' | 'scrapPart' | 'registerOwner')
  | (
      | 'recordLifeFact'
      | 'releaseHull'
      | 'reportDefect'
      | 'addPhoto'
      | 'dispose'
      | 'recordRepair'
      | 'judgeRepair'
      | 'correct'
    )
>;

/** Material that is wanted, before it is known which lot it comes from. */
export type Need = { readonly amount: Amount } & (
  | { readonly material: MaterialCode; readonly tank?: string; readonly gun?: GunCode; readonly setAside?: boolean }
  | { readonly lot: string }
  | { readonly unidentified: Unidentified }
);

type Unidentified = Omit<NonNullable<Taken['unidentified']>, 'likely'>;

/** Something that happens in the shop. `of` is the code or id in the path of the call: a part, a hull, a layer ... */
export interface Draft {
  readonly act: ActName;
  /** Its own name in the plan; its id is made from it. */
  readonly name: string;
  readonly at: string;
  /** When the work began, where it matters: a tank is filled before it, not in the middle of it. */
  readonly began?: string;
  readonly by: string;
  readonly of?: string;
  readonly body: object;
  readonly needs: readonly Need[];
}

/** A call, ready to be made: the body is what a client would send. */
export interface Step {
  readonly act: ActName;
  readonly name: string;
  readonly of?: string;
  readonly body: Record<string, unknown> & { readonly id: string; readonly happenedAt: string };
}

type Envelope = 'id' | 'enteredBy' | 'device' | 'happenedAt' | 'station';
type Body<A extends ActName> = Omit<z.input<Routes[A]['body']>, Envelope | 'used' | 'inputs'>;
type Moment = Pick<Draft, 'name' | 'at' | 'by'> & Partial<Pick<Draft, 'of' | 'began'>>;

/** Writes down something that happens; the body is checked against the contract by the compiler, and again when sent. */
export const draft = <A extends ActName>(
  act: A,
  moment: Moment,
  body: Body<A>,
  needs: readonly Need[] = [],
): Draft => ({ act, ...moment, body, needs });

/** All that is not said but follows from the seed: ids and numbers. */
export interface Seeded {
  /** Id of a step, or of the n-th row that it writes. */
  id(step: string, row?: number): string;
  random(name: string): Random;
}

/** The same seed gives the same ids and numbers. Rows are counted as `Fact.insertMany` does. */
export const seeded = (seed: string): Seeded => ({
  id: (step, row = 0) => {
    const fact = childId(`demo ${seed}`, step);
    return row === 0 ? fact : childId(fact, String(row));
  },
  random: (name) => randomOf(`demo ${seed}/${name}`),
});
