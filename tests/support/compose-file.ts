import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

/** One container, as far as the tests look at it. */
export interface Container {
  readonly image: string;
  readonly build?: { readonly context: string; readonly dockerfile: string };
  readonly environment: Readonly<Record<string, string | number>>;
  readonly ports?: readonly string[];
  readonly volumes: readonly string[];
  readonly networks: readonly string[] | Readonly<Record<string, { readonly ipv4_address: string } | null>>;
  readonly healthcheck: { readonly test: readonly string[] };
  readonly depends_on?: Readonly<Record<string, { readonly condition: string }>>;
  readonly user?: string;
  readonly read_only?: boolean;
  readonly cap_drop?: readonly string[];
  readonly security_opt?: readonly string[];
}

export interface Compose {
  readonly services: Readonly<Record<string, Container>>;
  readonly networks: Readonly<
    Record<
      string,
      null | { readonly ipam: { readonly config: readonly { readonly subnet: string; ip_range: string }[] } }
    >
  >;
  readonly volumes: Readonly<Record<string, unknown>>;
}

export const readCompose = (): Compose => parse(readFileSync('docker-compose.yml', 'utf8')) as Compose;

/** A variable that the file takes from who starts it: with a default after `:-`, or needed, with what to do, after `:?`. */
export interface Asked {
  readonly name: string;
  readonly how: string | undefined;
  readonly text: string | undefined;
}

const VARIABLE = /\$\{(\w+)(?:(:[-?])([^}]*))?\}/g;

export const askedIn = (text: string): Asked[] =>
  [...text.matchAll(VARIABLE)].map(([, name, how, more]) => ({ name: name as string, how, text: more }));

/** A value as the containers get it, when these variables are set. */
export const filledIn = (value: string, set: Readonly<Record<string, string>>): string =>
  value.replace(VARIABLE, (_all, name: string, how?: string, more?: string) => {
    const given = set[name];
    if (given) return given;
    if (how === ':-') return more ?? '';
    throw new Error(`${name} is not set: ${more ?? ''}`);
  });
