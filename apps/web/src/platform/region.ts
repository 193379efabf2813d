import { h, nodesOf, type Child } from './dom.js';
import { Refused, Unreachable } from './ask.js';

/** Something to be asked of the service and shown. */
export interface Asked<T> {
  /** What is asked for, in words that end "Loading ..." and "... could not be read". */
  readonly what: string;
  readonly load: () => Promise<T>;
  readonly show: (answer: T) => Child;
  /** What to say when the service knows no such thing. */
  readonly notThere?: () => Child;
}

/** A part of the page that fills itself: it says that it loads, then shows the answer or what went wrong. */
export const region = <T>(asked: Asked<T>): HTMLElement => {
  const place = h('div', { class: 'region' });
  void refill(place, asked);
  return place;
};

const refill = async <T>(place: HTMLElement, asked: Asked<T>): Promise<void> => {
  put(place, h('p', { class: 'soft', role: 'status' }, `Loading ${asked.what} …`));
  place.setAttribute('aria-busy', 'true');
  try {
    put(place, asked.show(await asked.load()));
  } catch (error) {
    if (error instanceof Refused && error.status === 404 && asked.notThere) put(place, asked.notThere());
    else
      put(
        place,
        trouble(asked.what, error, () => void refill(place, asked)),
      );
  } finally {
    place.removeAttribute('aria-busy');
  }
};

const put = (place: HTMLElement, content: Child): void => place.replaceChildren(...nodesOf([content]));

/** Says what went wrong, to what, and what to do, with a way to ask again. */
export const trouble = (what: string, error: unknown, again: () => void): HTMLElement => {
  const button = h('button', { type: 'button', class: 'btn' }, 'Try again');
  button.addEventListener('click', again);
  return h(
    'div',
    { class: 'trouble', role: 'alert' },
    h('p', {}, h('b', {}, `Not read: ${what}.`)),
    reasons(error),
    button,
  );
};

/** What went wrong, in plain words: the service's own when it refused for a reason. */
export const reasons = (error: unknown): Child => {
  if (error instanceof Unreachable)
    return h(
      'p',
      {},
      'The service does not answer. Check that it runs and that this device reaches it, then try again.',
    );
  if (!(error instanceof Refused)) return h('p', {}, 'This page could not show the answer. Load the page again.');
  if (error.status >= 500)
    return h(
      'p',
      {},
      `The service failed (${error.status}). Nothing was changed. Try again; if it goes on, tell whoever runs the service.`,
    );
  const wrong = error.problem?.errors ?? [];
  if (wrong.length === 0) return h('p', {}, error.message);
  return h(
    'ul',
    { class: 'plain' },
    wrong.map(({ detail }) => h('li', {}, detail)),
  );
};
