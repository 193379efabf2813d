import type { Place } from '@hull-record/contracts';
import { girthAt, type GirthLine, type Skin } from '@hull-record/trade';
import type { Random } from './random.js';

/** A place on the shell of a skin, up to a line along it, clear of both ends. */
export const somewhere = (skin: Skin, random: Random, upTo: GirthLine = 'edgeGirthMm'): Place => {
  const fromTransomMm = Math.round(skin.lengthMm * random.between(0.05, 0.72));
  const girth = girthAt(skin, fromTransomMm, upTo) ?? 0;
  return {
    ...{ surface: 'shell', side: random.pick(['port', 'starboard'] as const), fromTransomMm },
    girthMm: Math.floor(girth * random.between(0.12, 0.88)),
  };
};
