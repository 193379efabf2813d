/**
 * The rules of the trade that this page draws and computes with.
 *
 * The browser loads them as the service serves them, from the compiled library at /lib/trade; the compiler reads that
 * address as the library's source (see `paths` in tsconfig.json). So there is one copy of each rule, and no bundler.
 * An import map would say the same, but it is an inline script, which the page's security policy forbids.
 */
export {
  CAUTIONS,
  checkPlace,
  DEFECT_KINDS,
  fromSi,
  isUnit,
  lineOnMap,
  placeOnMap,
  skinOutline,
  toSi,
  TRANSOM_GAP_MM,
  transomOutline,
  windowCountdown,
} from '/lib/trade/index.js';
export type { GirthLine, MapPoint, Place, Skin } from '/lib/trade/index.js';
