import type { SessionView } from '@hull-record/contracts';
import { clock } from '../device/clock.js';
import { holding } from '../device/holder.js';

/** The secret of the page that the service told last; a page of another site cannot read it. */
let csrf: string | null | undefined;

/** What signing in hangs on: who is told when the service asks for it, and what travels with each write. */
export const session = {
  /** Called when the service answered 401. */
  signInAsked: (): void => undefined,
  /** Keeps what the service said of who is signed in. */
  told: (view: SessionView): void => {
    csrf = view.csrf;
    clock.compared(view.at);
    holding.told(view);
  },
  isTold: (): boolean => csrf !== undefined,
  /** Headers that a write carries beside its body: the secret of the page, against forged requests. */
  headersOfWrites: (): Readonly<Record<string, string>> => (csrf ? { 'x-hull-record-csrf': csrf } : {}),
};
