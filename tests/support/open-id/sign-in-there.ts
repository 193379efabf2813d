import type { Shown, Visitor } from './visitor.js';

/** The way back to the service. */
export const RETURN = /\/api\/open-id\/return\?/;

/** Types a name at the provider, says yes to what it asks, and goes on; `stop` ends it before an address is asked. */
export const signInThere = async (visitor: Visitor, first: Shown, name: string, stop?: RegExp): Promise<Shown> => {
  let page = first;
  for (let step = 0; step < 4 && /\/interaction\//.test(page.url.pathname); step += 1) {
    const login = /name="login"/.test(page.text);
    page = await visitor.send(page, login ? { login: name, password: 'any' } : {}, stop);
  }
  return page;
};

/** Begins at the service, signs in at the provider, and stops before the browser comes back. */
export const comeBackAs = async (visitor: Visitor, service: string, name: string): Promise<URL> => {
  const first = await visitor.go(`${service}/api/open-id/start`, { stop: RETURN });
  return (await signInThere(visitor, first, name, RETURN)).url;
};

/** The whole way: what the service shows in the end. */
export const signInByOffice = async (visitor: Visitor, service: string, name: string): Promise<Shown> =>
  visitor.go(await comeBackAs(visitor, service, name), { from: new URL('http://provider.invalid') });
