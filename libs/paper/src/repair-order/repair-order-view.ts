import type { DefectView } from '../build-record-view.js';
import type { HullMapView } from '../hull-map-view.js';
import type { LayerView } from '../layer-view.js';
import type { PaperPart, PaperView } from '../papers/paper-view.js';

/** An order to repair defects of one part, worded and rounded: everything the paper prints. */
export interface RepairOrderView extends PaperView {
  readonly part: PaperPart;
  /** Which defects it is about, one sentence. */
  readonly asked: string;
  /** In the order of their marks. */
  readonly defects: readonly DefectView[];
  /** With the marks of these defects alone; left out where the model has no skin geometry. */
  readonly map?: HullMapView | undefined;
  /** Outside in, with plies and lots: what a patch replaces. Readings and verdicts are not printed. */
  readonly layers: readonly LayerView[];
  /** Cautions by kind of work, in full. */
  readonly cautions: readonly { readonly work: string; readonly says: readonly string[] }[];
}
