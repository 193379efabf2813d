/**
 * The worker that lets the station start with no network: it keeps the files of the app, and nothing of the service's
 * answers. It sees the station's pages alone (its scope); the desk is always served by the service.
 */

export interface Lasting extends Event {
  readonly waitUntil: (until: Promise<unknown>) => void;
}
interface Fetching extends Lasting {
  readonly request: Request;
  readonly respondWith: (answer: Promise<Response>) => void;
}
interface Itself {
  readonly location: Location;
  readonly skipWaiting: () => Promise<void>;
  readonly clients: { readonly claim: () => Promise<void> };
  readonly addEventListener: ((type: 'install' | 'activate', on: (event: Lasting) => void) => void) &
    ((type: 'fetch', on: (event: Fetching) => void) => void) &
    ((type: 'message', on: (event: MessageEvent) => void) => void);
}

const worker = globalThis as unknown as Itself;

/** The files of this version of the app; the build writes them here. They are named after their content. */
const FILES = '__SHELL_FILES__'.split('\n');
/** The one page of the app, which names the others; it is kept as the service sent it, with its security policy. */
const PAGE = '/index.html';
const CACHE = '__SHELL_VERSION__';
/** Answers of the service are kept by nobody: what a tablet needs of them it keeps itself, and says how old it is. */
const NOT_OURS = /^\/(api|health)(\/|$)/i;

worker.addEventListener('install', (event) => event.waitUntil(fetchAll()));
// A page that was open before its first worker has what it may still fetch from the worker too.
worker.addEventListener('activate', (event) => event.waitUntil(forgetOthers().then(() => worker.clients.claim())));
// A new version waits until a person asks for it: never under a half-filled form.
worker.addEventListener('message', ({ data }) => {
  if (data === 'take over') void worker.skipWaiting();
});
worker.addEventListener('fetch', (event) => {
  const { method, url, mode } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== worker.location.origin || NOT_OURS.test(pathname)) return;
  if (mode === 'navigate') event.respondWith(kept(PAGE, event.request));
  else if (FILES.includes(pathname)) event.respondWith(kept(pathname, event.request));
});

/** What is named after its content is taken over from the version before. */
const fetchAll = async (): Promise<void> => {
  const cache = await caches.open(CACHE);
  await Promise.all(
    FILES.map(async (file) => {
      const before = file.startsWith('/assets/') ? await caches.match(file) : undefined;
      const answer = before ?? (await fetch(file, { cache: 'reload' }));
      if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
      await cache.put(file, answer);
    }),
  );
};

const forgetOthers = async (): Promise<void> => {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name !== CACHE).map((name) => caches.delete(name)));
};

const kept = async (file: string, request: Request): Promise<Response> => {
  const cache = await caches.open(CACHE);
  return (await cache.match(file)) ?? fetch(request);
};
