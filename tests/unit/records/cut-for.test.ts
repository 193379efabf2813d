import { describe, expect, it } from '@jest/globals';
import { cutFor } from '../../../apps/service/src/records/cut-for.js';
import { aLayer } from '../../support/paper-layers.js';
import { aDefect, aHullPart, aView } from '../../support/paper-views.js';

const ROLES = new Map([
  ['L-11', 'laminator'],
  ['Q-03', 'quality'],
  ['L-1', 'laminator'],
]);
const view = aView({
  parts: [
    aHullPart({
      layers: [
        aLayer({ doneBy: ['L-11', 'L-1'], enteredBy: 'L-11', note: 'L-11 was in a hurry', signature: 'Q-03, 1 May' }),
      ],
      defects: [aDefect({ note: 'reported by Q-03' })],
    }),
  ],
});
const layerOf = (cut: 'internal' | 'dealer' | 'expert') => cutFor(view, cut, ROLES).parts[0]?.layers[0];

describe('a build record as it is handed out', () => {
  it('tells people by badge inside the plant, and says so', () => {
    expect(layerOf('internal')).toMatchObject({ doneBy: ['L-11', 'L-1'], note: 'L-11 was in a hurry' });
    expect(cutFor(view, 'internal', ROLES).cut).toBe('internal: people by badge');
  });

  it('tells the dealer roles, in every text', () => {
    expect(layerOf('dealer')).toMatchObject({
      ...{ doneBy: ['laminator', 'laminator'], enteredBy: 'laminator', signature: 'quality, 1 May' },
    });
    const whole = JSON.stringify(cutFor(view, 'dealer', ROLES));
    for (const badge of ROLES.keys()) expect(whole).not.toMatch(new RegExp(`(?<![\\w-])${badge}(?![\\w-])`));
  });

  it('tells an outside expert the same number for the same person, and keeps the notes', () => {
    const layer = layerOf('expert');
    expect(layer?.doneBy[0]).toBe(layer?.enteredBy);
    expect(new Set([...(layer?.doneBy ?? []), layer?.signature?.split(',')[0]]).size).toBe(3);
    expect(layer?.note).toBe(`${layer?.enteredBy ?? ''} was in a hurry`);
  });

  it('leaves codes alone that only begin like a badge', () => {
    const lots = aView({ hullNumber: 'L-110', model: 'Q-03-B' });
    expect(cutFor(lots, 'dealer', ROLES)).toMatchObject({ hullNumber: 'L-110', model: 'Q-03-B' });
  });
});
