const DEFERRAL =
  "The material's safety and technical data sheets, local codes and the authority having jurisdiction come first; " +
  'leave what they reserve to licensed or certified people to them.';

/**
 * Short cautions for the screens and papers that plan hazardous work, one sentence an entry, in reading order.
 *
 * Common practice, with NFPA 33 (spray areas, styrene cross-linked composites, organic peroxides) for ignition
 * sources. They remind; they replace neither a data sheet nor training. Each list ends by deferring to those.
 */
export const CAUTIONS = {
  laminating: [
    'Styrene vapor is harmful and flammable: ventilate, and wear the respirator, gloves and eye protection the data sheet asks for.',
    'Keep flames, sparks, static and unrated electrical devices out of spray areas.',
    'Curing resin makes heat: keep thickness per pass within the data sheet, and put hot or leftover mix where it can cool safely outdoors.',
    'Collect rags, overspray and trimmings daily in closed metal containers: catalyzed waste can ignite by itself.',
    DEFERRAL,
  ],
  mixing: [
    'Never mix catalyst and promoter directly.',
    'Promoter goes into the resin first and is stirred in fully; catalyst goes in last.',
    'Peroxide catalyst (MEKP) burns skin and can blind: wear goggles and gloves, and flush a splash in the eye with water at once, then get medical help.',
    'Keep catalyst cool, clean, in its own container and apart from promoters, metals, acids and anything that burns; never pour leftover catalyst back.',
    'Soak up spilled catalyst as its data sheet says; rags and sawdust can catch fire.',
    DEFERRAL,
  ],
  grinding: [
    'Laminate and gel coat dust irritates skin, eyes and lungs: use extraction at the tool and a fitted respirator, goggles, gloves and covered skin.',
    'Fine dust can burn or explode: keep it from building up, and away from sparks and open flame.',
    'Do not grind laminate that is still soft or warm, and check what is behind it: tanks, wiring, foam or trapped fuel vapor.',
    DEFERRAL,
  ],
  repair: [
    'A repair to structure is a secondary bond: its taper, plies and materials follow an approved procedure, and a qualified person decides whether it may be done at all.',
    'Find the extent and reason of the damage before grinding; what shows on the surface may be the smaller part.',
    'Dry, clean and abrade the surface as the material data asks; solvents are flammable and need ventilation and gloves.',
    'Support the hull and lock out power, fuel and batteries before work starts; tanks and closed spaces need their own entry precautions.',
    'The cautions for mixing, laminating and grinding apply as well.',
    DEFERRAL,
  ],
} as const satisfies Readonly<Record<string, readonly string[]>>;

/** The kinds of work that carry cautions. */
export type CautionedWork = keyof typeof CAUTIONS;
