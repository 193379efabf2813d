import { z } from 'zod';
import { DefectView } from './defects.js';
import { Code, Day, Instant, PageQuery, page } from './envelope.js';
import { PartKind } from './models.js';
import { recomputing } from './recomputations.js';

/** So many defects a map shows at most: the newest. */
export const MAP_AT_MOST = 5_000;

const mm = z.coerce.number().min(-100_000).max(100_000).optional();

/** Which defects of a model a map shows; what is left out does not narrow it. */
export const MapFilter = z
  .object({
    partKind: PartKind.default('hull molding'),
    kind: Code.optional().describe('kind of defect'),
    layer: Code.optional().describe('code of the layer it is in'),
    mold: Code.optional(),
    lot: Code.optional().describe('code of a lot: only parts that hold some of it'),
    from: Day.optional().describe('found on this day or later, by the clock of the plant'),
    until: Day.optional().describe('found on this day or before, by the clock of the plant'),
    surface: z.enum(['shell', 'transom']).optional().describe('the area is on this surface'),
    alongFrom: mm.describe('mm from the transom on the shell; mm up from the keel on the transom'),
    alongTo: mm,
    acrossFrom: mm.describe('mm from the keel or centreline: port is positive, starboard negative'),
    acrossTo: mm,
  })
  .meta({ id: 'MapFilter' });
export type MapFilter = z.output<typeof MapFilter>;

/** The defects on a map, as a list. */
export const MappedDefectsQuery = PageQuery.extend(MapFilter.shape);
export type MappedDefectsQuery = z.output<typeof MappedDefectsQuery>;

/** One defect as a map draws it. */
export const MapPointView = z
  .object({
    id: z.uuid(),
    part: z.string(),
    kind: z.string(),
    surface: z.enum(['shell', 'transom']),
    along: z.number().describe('mm from the transom on the shell; mm up from the keel on the transom'),
    across: z.number().describe('mm from the keel or centreline: port is positive, starboard negative'),
  })
  .meta({ id: 'MapPointView' });
export type MapPointView = z.output<typeof MapPointView>;

/** The defects of many hulls of one model on one skin. */
export const DefectMap = z
  .object({
    model: z.string(),
    partKind: PartKind,
    parts: z.number().describe('how many parts of this kind fit model, mold and lot, with or without a defect'),
    partsWith: z.number().describe('how many parts have a defect that fits'),
    found: z.number().describe('how many defects fit'),
    points: z.array(MapPointView).describe(`at most ${MAP_AT_MOST} of them, the newest first`),
    kinds: z.array(z.object({ kind: z.string(), found: z.number() })).describe('by kind, the most frequent first'),
    recomputing,
  })
  .meta({ id: 'DefectMap' });
export type DefectMap = z.output<typeof DefectMap>;

/** A defect with the hull and mold of its part. */
export const MappedDefect = DefectView.extend({
  hull: z.string().nullable().describe('null: the part is in no hull'),
  mold: z.string(),
  happenedAt: Instant,
}).meta({ id: 'MappedDefect' });
export type MappedDefect = z.output<typeof MappedDefect>;
export const MappedDefectsPage = page('MappedDefectsPage', MappedDefect)
  .extend({ recomputing })
  .meta({ id: 'MappedDefectsPage' });
export type MappedDefectsPage = z.output<typeof MappedDefectsPage>;
