import type {
  ActAnswer,
  ActPath,
  GetAnswer,
  GetPath,
  PaperPath,
  ParameterOf,
  PostAnswer,
  PostBody,
  PostPath,
  QueryOf,
} from './contract.js';
import { send } from './send.js';

type Parameters<P extends string> = Readonly<Record<ParameterOf<P>, string>>;

/** A path of the route table with its parameters put in, each escaped. */
export const pathOf = <P extends string>(path: P, parameters: Parameters<P>): string =>
  path.replace(/:(\w+)/g, (_, name: string) => encodeURIComponent((parameters as Record<string, string>)[name] ?? ''));

/** A path with its query; what is undefined or empty is left out. */
const withQuery = (path: string, query: Readonly<Record<string, string | undefined>>): string => {
  const given = Object.entries(query).filter((entry): entry is [string, string] => !!entry[1]);
  return given.length === 0 ? path : `${path}?${new URLSearchParams(given).toString()}`;
};

/**
 * Asks the service by a path of the route table.
 *
 * @throws Refused, Unreachable
 */
export const ask = <P extends GetPath>(
  path: P,
  parameters: Parameters<P>,
  { query, signal }: { query?: QueryOf<P>; signal?: AbortSignal } = {},
): Promise<GetAnswer<P>> => send(withQuery(pathOf(path, parameters), { ...query }), undefined, signal);

/**
 * Sends a body to a path of the route table, and gives the answer.
 *
 * @throws Refused, Unreachable
 */
export const post = <P extends PostPath>(
  path: P,
  parameters: Parameters<P>,
  body: PostBody<P>,
  signal?: AbortSignal,
): Promise<PostAnswer<P>> => send(pathOf(path, parameters), body, signal);

/**
 * Does what a path of the route table is for; it takes no body.
 *
 * @throws Refused, Unreachable
 */
export const act = <P extends ActPath>(path: P, parameters: Parameters<P>): Promise<ActAnswer<P>> =>
  send(pathOf(path, parameters), {});

/** Where a paper is to be had, with what it is asked for. */
export const paperPath = <P extends PaperPath>(
  path: P,
  parameters: Parameters<P>,
  query: Readonly<Record<string, string>> = {},
): string => withQuery(pathOf(path, parameters), query);
