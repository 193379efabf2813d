import type { Role } from '@hull-record/contracts';
import type { EntityManager, EntityMetadata, EntityTarget } from 'typeorm';
import { childId } from '../ids.js';
import { asHeld } from './as-held.js';
import { rowDigest } from './digest.js';
import type { FactRow, FilledIn } from './fact-row.js';
import { NonconformityEntity } from './nonconformity.entity.js';

/** Who records, on what, and when. */
export interface Author {
  readonly plantId: string;
  readonly personId: string;
  readonly deviceId: string;
  readonly badge: string;
  /** What this person was allowed when it was entered: now, for who is signed in. */
  readonly roles: readonly Role[];
  /** `proved` by a session, a token, or taking the device over with a PIN; else as stated. */
  readonly identity: 'stated' | 'proved';
  /** Nobody proved to be this person on the device that sent it: it has to be confirmed. */
  readonly unproved?: boolean;
}

/** A row that a fact wrote, with the digest that the journal keeps of it. */
export interface WrittenRow {
  readonly table: string;
  readonly id: string;
  readonly digest: string;
  readonly values: Readonly<Record<string, unknown>>;
}

/** Values of a new row; `id` and `root` default to an id made from the fact's own. */
export type NewRow<E extends FactRow> = Omit<E, FilledIn> & {
  readonly id?: string;
  readonly root?: string;
  readonly happenedAt?: Date;
};

export interface OpenedNonconformity {
  readonly id: string;
  readonly rule: string;
  readonly detail: string;
}

/** What a receipt says of rules that were broken, and of what else is worth knowing. */
export interface Found {
  readonly nonconformities: readonly OpenedNonconformity[];
  readonly warnings: readonly string[];
}

/** A statement has at most 65,535 parameters, and no table has more than 60 columns. */
const ROWS_AT_ONCE = 1_000;

/** A fact while it is being recorded, inside its transaction: what it writes goes into its journal entry. */
export class Fact {
  readonly rows: WrittenRow[] = [];
  readonly nonconformities: OpenedNonconformity[] = [];
  readonly warnings: string[] = [];
  private gaveItsOwnId = false;

  constructor(
    readonly tx: EntityManager,
    readonly id: string,
    readonly author: Author,
    readonly happenedAt: Date,
    readonly recordedAt: Date,
  ) {}

  /** Appends one row. The first row that names no id has the fact's own, so that its maker can refer to it at once. */
  async insert<E extends FactRow>(entity: EntityTarget<E>, values: NewRow<E>): Promise<string> {
    const [id] = await this.insertMany(entity, [values]);
    return id as string;
  }

  /** Appends rows of one kind, many in one statement. */
  async insertMany<E extends FactRow>(entity: EntityTarget<E>, rows: readonly NewRow<E>[]): Promise<readonly string[]> {
    if (rows.length === 0) return [];
    const metadata = this.tx.connection.getMetadata(entity);
    const complete = rows.map((values, i) => this.complete(values, this.rows.length + i));
    for (let i = 0; i < complete.length; i += ROWS_AT_ONCE) {
      const some = complete.slice(i, i + ROWS_AT_ONCE) as never;
      await this.tx.createQueryBuilder().insert().into(entity).values(some).updateEntity(false).execute();
    }
    for (const row of complete) this.rows.push(written(metadata, row));
    return complete.map((row) => row.id);
  }

  /** Keeps what was done against a rule; it blocks release until quality disposes of it. */
  async open(found: {
    rule: string;
    detail: string;
    aboutKind: string;
    aboutId: string;
    partId: string | null;
  }): Promise<void> {
    const id = await this.insert(NonconformityEntity, found);
    this.nonconformities.push({ id, rule: found.rule, detail: found.detail });
  }

  /** Says something that is no nonconformity, to whoever records this. */
  warn(text: string): void {
    if (!this.warnings.includes(text)) this.warnings.push(text);
  }

  /** What was found wrong, and what else there is to say, for the receipt. */
  found(): Found {
    return { nonconformities: this.nonconformities, warnings: this.warnings };
  }

  /** Rows of one table that this fact wrote so far. */
  wrote(table: string): readonly WrittenRow[] {
    return this.rows.filter((row) => row.table === table);
  }

  private nextId(ordinal: number): string {
    if (this.gaveItsOwnId) return childId(this.id, String(ordinal));
    this.gaveItsOwnId = true;
    return this.id;
  }

  private complete<E extends FactRow>(values: NewRow<E>, ordinal: number): FactRow {
    const id = values.id ?? this.nextId(ordinal);
    return {
      happenedAt: this.happenedAt,
      ...values,
      id,
      root: values.root ?? id,
      plantId: this.author.plantId,
      entryId: this.id,
      recordedAt: this.recordedAt,
    };
  }
}

const written = (metadata: EntityMetadata, row: FactRow): WrittenRow => {
  const columns = Object.fromEntries(
    metadata.columns.map((column) => [column.databaseName, asHeld(column.type, column.getEntityValue(row as never))]),
  );
  return { table: metadata.tableName, id: row.id, digest: rowDigest(columns), values: columns };
};
