import { checkSkin, type Skin } from '@hull-record/trade';
import type { FieldError } from '../api/problem.js';
import type { PostBody } from '../api/contract.js';
import type { OfEnvelope } from '../outbox/entry.js';
import { PART_KINDS, type PartKindName } from './part-kinds.js';
import type { Fault } from './schedule/check-schedule.js';
import { figureTyped } from './typed-figures.js';

type Body = Omit<PostBody<'/api/models'>, keyof OfEnvelope>;

/** A station as typed, mm. */
export interface StationDraft {
  readonly xMm: string;
  readonly edgeGirthMm: string;
  readonly chineGirthMm: string;
  readonly waterlineGirthMm: string;
}

/** A skin as typed, mm; a transom of which nothing is typed is none. */
export interface SkinDraft {
  readonly lengthMm: string;
  readonly stations: readonly StationDraft[];
  readonly transom: { readonly halfWidthMm: string; readonly heightMm: string };
}

/** A model as it is entered. */
export interface ModelDraft {
  readonly code: string;
  readonly name: string;
  readonly requiredParts: readonly string[];
  readonly skins: Readonly<Partial<Record<PartKindName, SkinDraft>>>;
}

export const BLANK_STATION: StationDraft = { xMm: '', edgeGirthMm: '', chineGirthMm: '', waterlineGirthMm: '' };

/** A skin begins with its two ends, the first of which is the transom. */
export const BLANK_SKIN: SkinDraft = {
  lengthMm: '',
  stations: [{ ...BLANK_STATION, xMm: '0' }, BLANK_STATION],
  transom: { halfWidthMm: '', heightMm: '' },
};

export const BLANK_MODEL: ModelDraft = {
  ...{ code: '', name: '', requiredParts: ['hull molding'], skins: { 'hull molding': BLANK_SKIN } },
};

const orNone = <K extends string>(name: K, typed: string): { readonly [N in K]?: number } => {
  const value = figureTyped(typed);
  return (value === undefined ? {} : { [name]: value }) as { [N in K]?: number };
};

/** A skin as it is sent; what is no figure is NaN. */
export const skinOf = ({ lengthMm, stations, transom: { halfWidthMm, heightMm } }: SkinDraft): Skin => ({
  lengthMm: figureTyped(lengthMm) ?? Number.NaN,
  stations: stations.map((station) => ({
    xMm: figureTyped(station.xMm) ?? Number.NaN,
    edgeGirthMm: figureTyped(station.edgeGirthMm) ?? Number.NaN,
    ...orNone('chineGirthMm', station.chineGirthMm),
    ...orNone('waterlineGirthMm', station.waterlineGirthMm),
  })),
  ...(halfWidthMm.trim() === '' && heightMm.trim() === ''
    ? {}
    : {
        transom: {
          halfWidthMm: figureTyped(halfWidthMm) ?? Number.NaN,
          heightMm: figureTyped(heightMm) ?? Number.NaN,
        },
      }),
});

/** The skin of a draft once it can be drawn. */
export const drawableSkin = (draft: SkinDraft): Skin | null => {
  const skin = skinOf(draft);
  return checkSkin(skin).length === 0 ? skin : null;
};

export const modelBody = ({ code, name, requiredParts, skins }: ModelDraft): Body => ({
  ...{ code: code.trim(), name: name.trim(), requiredParts: requiredParts as PartKindName[] },
  skins: Object.fromEntries(
    PART_KINDS.flatMap((kind) => {
      const skin = skins[kind];
      return skin === undefined ? [] : [[kind, skinOf(skin) as never]];
    }),
  ),
});

/** What a model lacks to be sent at all, field by field; whether its skins hold together is for the service to say. */
export const checkModel = (
  { code, name, skins }: ModelDraft,
  words: (fault: Fault) => string,
): readonly FieldError[] => {
  const fault = (pointer: string, typed: string, isNeeded: boolean): readonly FieldError[] => {
    if (typed.trim() === '') return isNeeded ? [{ pointer, detail: words('empty') }] : [];
    return Number.isNaN(figureTyped(typed)) ? [{ pointer, detail: words('noFigure') }] : [];
  };
  const empty = (pointer: string, typed: string): readonly FieldError[] =>
    typed.trim() === '' ? [{ pointer, detail: words('empty') }] : [];
  return [
    ...empty('/code', code),
    ...empty('/name', name),
    ...Object.entries(skins).flatMap(([kind, { lengthMm, stations, transom }]) => [
      ...fault(`/skins/${kind}/lengthMm`, lengthMm, true),
      ...stations.flatMap((station, i) =>
        Object.entries(station).flatMap(([line, typed]: [string, string]) =>
          fault(`/skins/${kind}/stations/${i}/${line}`, typed, line === 'xMm' || line === 'edgeGirthMm'),
        ),
      ),
      ...fault(`/skins/${kind}/transom/halfWidthMm`, transom.halfWidthMm, transom.heightMm.trim() !== ''),
      ...fault(`/skins/${kind}/transom/heightMm`, transom.heightMm, transom.halfWidthMm.trim() !== ''),
    ]),
  ];
};
