/** Where the two hull identification numbers of a boat go, for the person who affixes them. */
export const HIN_PLACEMENT = {
  primary:
    'Starboard outboard side of the transom, within 2 in (51 mm) of the top of the transom, the gunwale or the hull and deck joint, whichever is lowest.',
  primaryWithoutTransom:
    'Without a usable transom: starboard outboard side of the hull, aft, within 1 ft (305 mm) of the stern and 2 in (51 mm) of the top.',
  secondary: 'In an unexposed place inside, or beneath a fitting or item of hardware.',
  height: 'Characters at least 1/4 in (6.35 mm) high, permanent, so that alteration is obvious.',
  source: '33 CFR 181.29 (as restated by two pages that agree)',
} as const;
