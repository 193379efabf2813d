import { NOTHING_LEFT_OUT, type CaseInputs, type JudgedHull } from '../../apps/service/src/cases/inputs/case-inputs.js';
import { settingsOf, type CaseSettings } from '../../apps/service/src/cases/settings.js';
import type { Plant } from './plant.js';

const CUT_OFF = '2026-06-30';

/** The settings that a case gets when nothing is said, with 999 shuffles. */
export const caseSettings = (): CaseSettings =>
  settingsOf(
    {
      ...{
        id: '00000000-0000-4000-8000-000000000000',
        enteredBy: 'QUA-01',
        device: 'desk',
        happenedAt: `${CUT_OFF}T12:00:00Z`,
      },
      ...{ kind: 'blister', models: [], origin: 'sold to first purchaser', reportLagDays: 0 },
      ...{ strata: ['build quarter', 'model'], exposureShare: 0.05, claims: 'recorded after this freeze' },
      ...{ seed: 1, worlds: 999, reason: 'A plant of the study.' },
    },
    { cutOff: CUT_OFF, cutOffBecause: 'as named' },
  );

const monthBefore = (days: number): string =>
  new Date(Date.parse(CUT_OFF) - days * 86_400_000).toISOString().slice(0, 7);

/** A plant of the study as the inputs of a look; without the hulls of a lot, when one is named. */
export const caseOf = ({ judged, exposures, molds }: Plant, without: string | null = null): CaseInputs => {
  const left = new Set(exposures.filter(({ lot }) => lot === without).flatMap(({ hulls }) => [...hulls]));
  const kept = [...judged.ages.keys()].filter((hull) => !left.has(hull));
  const places = new Map(kept.map((hull, place) => [hull, place]));
  const keptOf = (hulls: Uint32Array): number[] => [...hulls].filter((hull) => places.has(hull));
  return {
    ...{ watchedUntil: CUT_OFF, exploratory: false, spots: [], warrantyCapDays: null, belowWater: null },
    hulls: kept.map((hull) => hullOf(judged, hull)),
    leftOut: NOTHING_LEFT_OUT,
    lots: exposures.map(({ lot, family, hulls, shares }) => ({
      ...{ lot, supplierLot: null, material: null, family },
      hulls: keptOf(hulls).map((hull) => places.get(hull) as number),
      shares: keptOf(hulls).map((hull) => shares?.[hulls.indexOf(hull)] ?? 1),
    })),
    others: molds.map(({ lot, family, hulls }) => ({
      ...{ name: lot, family },
      hulls: keptOf(hulls).map((hull) => places.get(hull) as number),
    })),
  };
};

const hullOf = ({ ages, claimed, strata }: Plant['judged'], hull: number): JudgedHull => {
  const age = ages[hull] as number;
  const has = claimed[hull] === 1;
  return {
    ...{ number: `H${hull}`, built: monthBefore(age + 60), since: monthBefore(age), stratum: `S${strata[hull]}` },
    ...{ age, claimed: has, claimAges: has ? [age] : [], until: age, from: 0, running: !has },
  };
};
