import type { MaterialView, ModelView } from '@hull-record/contracts';

/** What the drawings of a part are made from, besides its own record. */
export interface Reference {
  readonly model: ModelView | undefined;
  readonly materials: readonly MaterialView[];
}
