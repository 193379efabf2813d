/**
 * What signing in will hang on: who is told when the service asks for it, and what travels with each write.
 *
 * Nobody signs in yet. The service answers 401 once it asks people who they are; then the page of signing in is shown.
 */
export const session = {
  /** Called when the service answered 401. */
  signInAsked: (): void => undefined,
  /** Headers that a write carries beside its body, such as a token against forged requests. */
  headersOfWrites: (): Readonly<Record<string, string>> => ({}),
};
