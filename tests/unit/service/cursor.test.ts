import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import { readCursor, toPage } from '../../../apps/service/src/platform/http/cursor.js';
import { InvalidRequest } from '../../../apps/service/src/platform/refusals.js';

interface Row {
  readonly name: string;
  readonly rank: number;
}

const keyOf = (row: Row): readonly (string | number)[] => [row.rank, row.name];

/** Reads a whole list by its cursors, as a client does; rows are asked for one more than the limit. */
const readAll = (rows: readonly Row[], limit: number): Row[] => {
  const read: Row[] = [];
  let cursor: string | undefined;
  do {
    const [rank, name] = readCursor(cursor, 2);
    const after = rows.filter(
      (row) => rank === null || row.rank > Number(rank) || (row.rank === rank && row.name > String(name)),
    );
    const page = toPage(after.slice(0, limit + 1), limit, keyOf);
    read.push(...page.items);
    cursor = page.next ?? undefined;
  } while (cursor !== undefined);
  return read;
};

const row = fc.record({ name: fc.string({ unit: 'grapheme' }), rank: fc.integer({ min: 0, max: 3 }) });
const byKey = (a: Row, b: Row): number => a.rank - b.rank || (a.name < b.name ? -1 : 1);

describe('a cursor', () => {
  it('leads through a list once: every row, in order, none twice', () => {
    const rows = fc.uniqueArray(row, { selector: (each) => JSON.stringify(keyOf(each)), maxLength: 40 });
    fc.assert(
      fc.property(rows, fc.integer({ min: 1, max: 12 }), (list, limit) => {
        const sorted = [...list].sort(byKey);
        expect(readAll(sorted, limit)).toEqual(sorted);
      }),
    );
  });

  it('is absent on the last page, also when the page is just full', () => {
    const rows = [1, 2].map((rank) => ({ rank, name: 'a' }));
    expect(toPage(rows, 2, keyOf).next).toBeNull();
    expect(toPage(rows, 1, keyOf).items).toEqual([rows[0]]);
    expect(toPage(rows, 1, keyOf).next).toMatch(/^[\w-]+$/);
    expect(toPage([], 5, keyOf)).toEqual({ items: [], next: null });
  });

  it('that is absent stands before the first row', () => {
    expect(readCursor(undefined, 3)).toEqual([null, null, null]);
  });

  const encoded = (value: unknown): string => Buffer.from(JSON.stringify(value)).toString('base64url');

  it.each([
    ['empty', ''],
    ['no base64', '%%%'],
    ['no JSON', Buffer.from('{').toString('base64url')],
    ['no list', encoded({ length: 2 })],
    ['of another list', encoded(['a'])],
    ['longer', encoded(['a', 1, 2])],
    ['holding null', encoded(['a', null])],
    ['holding an object', encoded(['a', {}])],
  ])('that is %s is refused, with its pointer', (_what, cursor) => {
    const refused = (): unknown => readCursor(cursor, 2);
    expect(refused).toThrow(InvalidRequest);
    expect(refused).toThrow(/^\/cursor: is not a cursor of this list/);
  });
});
