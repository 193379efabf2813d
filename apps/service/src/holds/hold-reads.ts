import { Injectable } from '@nestjs/common';
import { ListHeldHulls } from './list-held-hulls.query.js';
import { ListHolds } from './list-holds.query.js';
import { ReadHold } from './read-hold.query.js';

/** What is asked of holds. */
@Injectable()
export class HoldReads {
  constructor(
    readonly list: ListHolds,
    readonly one: ReadHold,
    readonly hulls: ListHeldHulls,
  ) {}
}
