import { h, nodesOf, s, type Child } from '../platform/dom.js';
import { readiness, type Readiness } from '../platform/calls.js';
import { mark } from '../marks/mark.js';

const ASK_AGAIN_MS = 1_500;

/** How far the demo plant is, asked again while it loads and the page is still open. Silent when there is no demo. */
export const demoProgress = (): HTMLElement => {
  const place = h('div', { role: 'status', class: 'demo' });
  void follow(place);
  return place;
};

const follow = async (place: HTMLElement): Promise<void> => {
  const now = await readiness().catch(() => null);
  place.replaceChildren(...nodesOf([now === null ? unanswered() : words(now)]));
  if (now?.demo.state !== 'loading') return;
  setTimeout(() => place.isConnected && void follow(place), ASK_AGAIN_MS);
};

const unanswered = (): Child => mark('near', 'The service does not say whether it is ready. Load the page again.');

const words = ({ demo }: Readiness): Child => {
  switch (demo.state) {
    case 'off':
      return null;
    case 'loaded':
      return mark('made', 'The demo plant is loaded. All of its hulls, lots and people are invented.');
    case 'failed':
      return mark(
        'outside',
        `The demo plant did not load: ${demo.detail ?? 'no reason was given'}. What was recorded stays.`,
      );
    case 'loading':
      return [
        mark(
          'to come',
          `The demo plant is loading: ${demo.done} of ${demo.total} steps. You can look around meanwhile.`,
        ),
        bar(demo),
      ];
  }
};

const bar = ({ done, total }: Readiness['demo']): SVGElement =>
  s(
    'svg',
    { class: 'progress', viewBox: '0 0 100 4', preserveAspectRatio: 'none', 'aria-hidden': 'true' },
    s('rect', { class: 'well', width: 100, height: 4 }),
    s('rect', { class: 'done', width: total === 0 ? 0 : (100 * done) / total, height: 4 }),
  );
