import type { routes } from '@hull-record/contracts';

/**
 * The route table of contracts as types alone: its schemas would weigh more than the rest of the app, and the service
 * has checked what it sends.
 */
type Table = (typeof routes)[keyof typeof routes];

/** What a schema of contracts says: as it is sent, and as it is answered. */
type Sent<S> = S extends { readonly _zod: { readonly input: infer I } } ? I : never;
type Answered<S> = S extends { readonly _zod: { readonly output: infer O } } ? O : never;

type Asking = Extract<Table, { readonly method: 'GET'; readonly response: unknown }>;
type Posting = Extract<Table, { readonly method: 'POST'; readonly response: unknown; readonly body: unknown }>;
type Acting = Exclude<Extract<Table, { readonly method: 'POST'; readonly response: unknown }>, Posting>;
type Paper = Extract<Table, { readonly method: 'GET'; readonly produces: 'application/pdf' }>;

/** A path that is asked, one that is sent to, and one of a paper, as the route table spells them. */
export type GetPath = Asking['path'];
export type PostPath = Posting['path'];
export type PaperPath = Paper['path'];
/** A path that is sent to without a body. */
export type ActPath = Acting['path'];

type RouteOf<M, P> = Extract<M, { readonly path: P }>;

/** The answer to a path that is asked. */
export type GetAnswer<P extends GetPath> = Answered<RouteOf<Asking, P>['response']>;
/** The body that a path takes, and its answer. */
export type PostBody<P extends PostPath> = Sent<RouteOf<Posting, P>['body']>;
export type PostAnswer<P extends PostPath> = Answered<RouteOf<Posting, P>['response']>;

/** The answer to a path that takes no body. */
export type ActAnswer<P extends ActPath> = Answered<RouteOf<Acting, P>['response']>;

/** The names of the parameters in a path: `/api/lots/:lot/hulls` has `lot`. */
export type ParameterOf<P extends string> = P extends `${infer Head}/${infer Tail}`
  ? ParameterOf<Head> | ParameterOf<Tail>
  : P extends `:${infer Name}.${string}`
    ? Name
    : P extends `:${infer Name}`
      ? Name
      : never;

/** The fields that the query of a path may have, as text; a field the path does not have is an error of the compiler. */
export type QueryOf<P extends GetPath> =
  RouteOf<Asking, P> extends { readonly query: infer Q }
    ? { readonly [Name in keyof Sent<Q>]?: string | undefined }
    : object;
