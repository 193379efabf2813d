import { createHash } from 'node:crypto';
import { canonicalJson } from '@hull-record/evidence';

/** A value of a row or request as it goes into canonical JSON: instants as ISO text, bytes as hexadecimal, nothing as null. */
const plain = (value: unknown): unknown => {
  if (value === undefined || value === null) return null;
  if (value instanceof Date) return value.toISOString();
  if (Buffer.isBuffer(value)) return value.toString('hex');
  if (Array.isArray(value)) return value.map(plain);
  if (typeof value === 'object') {
    return Object.fromEntries(
      Object.entries(value)
        .filter(([, inner]) => inner !== undefined)
        .map(([key, inner]) => [key, plain(inner)]),
    );
  }
  return value;
};

/** Canonical JSON (RFC 8785) of any plain value. */
export const canonical = (value: unknown): string => canonicalJson(plain(value));

/** SHA-256 of the canonical JSON of a request. */
export const digestOf = (value: unknown): Buffer => createHash('sha256').update(canonical(value)).digest();

/**
 * SHA-256, in hexadecimal, of a row as the database holds it: column names to values, those without a value left out, so
 * that a column which a later migration adds changes no digest that was written before it.
 */
export const rowDigest = (columns: Readonly<Record<string, unknown>>): string =>
  digestOf(
    Object.fromEntries(Object.entries(columns).filter(([, value]) => value !== null && value !== undefined)),
  ).toString('hex');
