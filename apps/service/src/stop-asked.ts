const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Hears from now on that the service is to stop: Ctrl-C, a service manager, a closed terminal.
 *
 * The same signal may come twice, from the terminal and from npm. It is heard to the end: a second one must not kill a
 * process that is just stopping its database.
 */
export const hearStop = (): AbortSignal => {
  const controller = new AbortController();
  for (const signal of SIGNALS) process.on(signal, () => controller.abort(new StopAsked(signal)));
  return controller.signal;
};

/** Thrown between two steps of a start when a stop was asked for meanwhile. */
export class StopAsked extends Error {
  override readonly name = 'StopAsked';
}
