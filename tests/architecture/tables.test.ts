import { afterAll, beforeAll, describe, expect, it } from '@jest/globals';
import { readFileSync, writeFileSync } from 'node:fs';
import { type EntityMetadata, QueryFailedError } from 'typeorm';
import { fromDatabase } from '../../apps/service/src/platform/http/database-refusals.js';
import { startService, type RunningService } from '../support/service.js';
import { columnsOf, constraintsOf, filledInOf, primaryKeysOf, tablesOf, type Ask } from './catalog.js';
import {
  COLUMNS_WITHOUT_PROPERTY,
  FILLED_IN_BY_DATABASE,
  KEPT_BY_THE_WRITER,
  KEYS_OF_MAPPER_ALONE,
  WITHOUT_HEADER,
} from './not-in-entities.js';

const LIST = 'tests/architecture/constraints.txt';
const HEADER = `# Every constraint and index of the migrated database. Compared both ways by tests/architecture/tables.test.ts.
# After a migration: WRITE_CONSTRAINTS=1 npm run jest -- tests/architecture/tables.test.ts, and read what changed.
`;

let service: RunningService;
let ask: Ask;
let entities: readonly EntityMetadata[];
beforeAll(async () => {
  service = await startService();
  ask = service.asOwner;
  entities = service.db.entityMetadatas;
});
afterAll(() => service.close());

const nameOf = (entity: EntityMetadata): string => `${entity.schema ?? 'public'}.${entity.tableName}`;
const names = (list: Readonly<Record<string, string>>): string[] => Object.keys(list);

/** The catalog's names of types that the mapper calls otherwise. */
const CATALOG_NAME: Readonly<Record<string, string>> = { timestamptz: 'timestamp with time zone' };

const columnsOfEntity = (entity: EntityMetadata): string[] =>
  entity.columns.map((column) => {
    const type = service.db.driver.normalizeType(column);
    const catalogType = `${CATALOG_NAME[type] ?? type}${column.isArray ? '[]' : ''}`;
    return `${nameOf(entity)}.${column.databaseName} ${catalogType} ${column.isNullable ? 'null' : 'not null'}`;
  });

const keyOfEntity = (entity: EntityMetadata): string =>
  `${nameOf(entity)}: ${entity.primaryColumns
    .map((column) => column.databaseName)
    .sort()
    .join(', ')}`;

describe('entities and the migrated database', () => {
  it('have the same tables', async () => {
    expect(entities.map(nameOf).sort()).toEqual((await tablesOf(ask)).sort());
  });

  it('have the same columns, types, arrays and nullability, but for the named ones', async () => {
    const mapped = [...entities.flatMap(columnsOfEntity), ...names(COLUMNS_WITHOUT_PROPERTY)];
    expect(mapped.sort()).toEqual((await columnsOf(ask)).sort());
  });

  it('have the same primary keys, but for the named ones', async () => {
    const mapped = entities.filter((entity) => !(nameOf(entity) in KEYS_OF_MAPPER_ALONE)).map(keyOfEntity);
    expect(mapped.sort()).toEqual((await primaryKeysOf(ask)).sort());
  });

  it('leave to the database only the values that are named', async () => {
    expect((await filledInOf(ask)).sort()).toEqual(names(FILLED_IN_BY_DATABASE).sort());
  });

  it('have exactly the constraints and indexes of the committed list', async () => {
    const found = `${HEADER}${(await constraintsOf(ask)).join('\n')}\n`;
    if (process.env['WRITE_CONSTRAINTS']) writeFileSync(LIST, found);
    expect(found.split('\n')).toEqual(readFileSync(LIST, 'utf8').split('\n'));
  });
});

describe('tables of facts', () => {
  const factTables = async (): Promise<string[]> => (await tablesOf(ask)).filter((name) => name.startsWith('fact.'));

  it('each have a primary key', async () => {
    const keyed = (await primaryKeysOf(ask)).map((line) => line.split(':')[0]);
    expect((await factTables()).filter((table) => !keyed.includes(table))).toEqual([]);
  });

  it('each carry the header of a fact, but for the named ones', async () => {
    const columns = await columnsOf(ask);
    const instant = 'timestamp with time zone not null';
    const header = ['id uuid not null', 'root uuid not null', 'plant_id uuid not null', 'entry_id uuid not null'];
    const whole = [...header, `happened_at ${instant}`, `recorded_at ${instant}`];
    const lacking = (await factTables()).filter((table) => !whole.every((c) => columns.includes(`${table}.${c}`)));
    expect(lacking.sort()).toEqual(names(WITHOUT_HEADER).map((name) => `fact.${name}`));
  });

  it('each refer to their plant and their journal entry, but for the named ones', async () => {
    const constraints = await constraintsOf(ask);
    const refer = (table: string, to: string): boolean =>
      constraints.some((line) => line.startsWith(`${table} `) && line.includes(`FOREIGN KEY (${to}`));
    const tables = (await factTables()).filter((table) => !(table.replace('fact.', '') in WITHOUT_HEADER));
    expect(tables.filter((table) => !refer(table, 'plant_id') || !refer(table, 'entry_id'))).toEqual([]);
    expect(tables.length).toBeGreaterThan(20);
  });

  it('answer a unique rule that a request can break with a refusal of its own, never as an error of the service', async () => {
    const unique = (await constraintsOf(ask))
      .filter((line) => line.startsWith('fact.') && /: (UNIQUE|CREATE UNIQUE)/.test(line))
      .map((line) => line.replace(/^\S+ (\S+): .*$/, '$1'));
    const unanswered = unique.filter((constraint) => fromDatabase(violationOf(constraint)) === undefined);
    expect(unanswered.sort()).toEqual(names(KEPT_BY_THE_WRITER).sort());
    expect(unique.length).toBeGreaterThan(20);
  });
});

const violationOf = (constraint: string): QueryFailedError =>
  new QueryFailedError('insert', [], Object.assign(new Error(), { code: '23505', constraint }));
