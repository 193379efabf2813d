/** Rules over which nobody goes on, whatever the reason. */
const LIFTED_BY_NOBODY = new Set(['catalyst-meets-promoter', 'lot-on-safety-hold']);

/** Who may go on over a broken rule: a shift lead, under nonconformance, or nobody. */
export const whoLifts = (rule: string): 'shift lead' | 'nobody' =>
  LIFTED_BY_NOBODY.has(rule) ? 'nobody' : 'shift lead';

const REMEDIES: Readonly<Record<string, string>> = {
  'expired-lot': 'Take a lot that has not expired, or have quality retest this one.',
  'lot-not-released': 'Take a released lot, or have quality release this one.',
  'lot-on-hold': 'Take another lot, or have the hold lifted.',
  'lot-on-safety-hold': 'Take another lot. Nobody goes on over a safety hold.',
  'container-rejected': 'Take another container, and set this one aside.',
  'used-before-it-came': 'Check the lot and the time.',
  'unidentified-material': 'Take material that is labelled, or name the lots it may be of.',
  'material-not-in-schedule':
    'Take a material of this layer, or have quality move the part to another schedule version.',
  'layer-out-of-order': 'Make the layer before it first, or record it.',
  'hold-point-passed': 'Have the hold point signed first.',
  'climate-outside': 'Wait until the climate is inside its limits.',
  'catalyst-outside-window':
    'Weigh the catalyst for the window of the data sheet. Too little never cures; too much runs hot.',
  'lay-up-too-early': 'Wait until the layer before has gelled enough: see its window.',
  'lay-up-window-passed':
    'The layer before has cured: prepare its surface (wipe, abrade, remove dust), and say how. Then it is a secondary bond.',
  'dew-point-margin': 'Warm the mold or dry the air until the surface is above the dew point by the margin.',
  'shop-climate-outside': 'Wait until the air of the area is inside the window of the plant.',
  'repair-geometry':
    'Grind the taper longer, or match the patch to the laminate: the approver of the procedure decides.',
  'film-does-not-fit':
    'Enter what is missing of the material used, or read the film again: one of the two is not as recorded.',
  'glass-outside-schedule': 'Weigh the glass again, or enter what is missing; lay what is short before going on.',
  'thickness-outside': 'Measure again at more points. A thin laminate is for the designer to judge, not for the shop.',
  'hardness-too-low': 'Let it cure, warm it, and read again; do not build on an undercured layer.',
  'catalyst-meets-promoter':
    'Put promoter into the resin first, and catalyst last. Never mix catalyst and promoter directly.',
};

/** What to do about a broken rule before the act. */
export const remedyOf = (rule: string): string => REMEDIES[rule] ?? 'Ask quality before going on.';
