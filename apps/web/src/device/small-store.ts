/** A small thing that this device remembers between visits, and that other windows of it follow. */
export interface SmallStore<T> {
  readonly get: () => T;
  readonly set: (value: T) => void;
  readonly subscribe: (tell: () => void) => () => void;
}

/** Keeps one JSON value under a name; a device that keeps nothing has it for this visit. */
export const smallStore = <T>(name: string, first: T): SmallStore<T> => {
  let now = read(name, first);
  const listeners = new Set<() => void>();
  const tellAll = (): void => listeners.forEach((tell) => tell());
  addEventListener('storage', ({ key }) => {
    if (key !== name) return;
    now = read(name, first);
    tellAll();
  });
  return {
    get: () => now,
    set: (value) => {
      now = value;
      try {
        localStorage.setItem(name, JSON.stringify(value));
      } catch {
        // It holds for this visit.
      }
      tellAll();
    },
    subscribe: (tell) => {
      listeners.add(tell);
      return () => listeners.delete(tell);
    },
  };
};

const read = <T>(name: string, first: T): T => {
  try {
    return (JSON.parse(localStorage.getItem(name) ?? 'null') as T | null) ?? first;
  } catch {
    return first;
  }
};
