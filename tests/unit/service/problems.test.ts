import { describe, expect, it } from '@jest/globals';
import { BadRequestException, NotFoundException, PayloadTooLargeException } from '@nestjs/common';
import { Problem } from '@hull-record/contracts';
import { QueryFailedError } from 'typeorm';
import { fromDatabase } from '../../../apps/service/src/platform/http/database-refusals.js';
import { toProblem } from '../../../apps/service/src/platform/http/problem.filter.js';
import { pointerOf, refusalOf } from '../../../apps/service/src/platform/http/validation.js';
import {
  ClientIdReused,
  Conflict,
  InvalidRequest,
  NotThere,
  UnknownBadge,
  UnknownDevice,
  Unprocessable,
} from '../../../apps/service/src/platform/refusals.js';

const failed = (more: object): QueryFailedError =>
  new QueryFailedError('insert into fact.lot', ['secret'], Object.assign(new Error('driver says'), more));

describe('a refusal as problem details (RFC 9457)', () => {
  it.each([
    [new InvalidRequest([{ pointer: '/amount/unit', detail: 'unknown' }]), 400, 'invalid-request', ['/amount/unit']],
    [new UnknownBadge('X', '/doneBy/1'), 403, 'unknown-badge', ['/doneBy/1']],
    [new UnknownDevice('X'), 403, 'unknown-device', ['/device']],
    [new NotThere('hull', '86-9'), 404, 'not-found', []],
    [new NotThere('lot', 'L-9', '/used/0/lot'), 422, 'not-found', ['/used/0/lot']],
    [new ClientIdReused('5f0c'), 409, 'client-id-reused', ['/id']],
    [new Conflict('number-taken', 'taken', '/number'), 409, 'number-taken', ['/number']],
    [new Conflict('try-again', 'again'), 409, 'try-again', []],
    [new Unprocessable('no-conversion', 'no density', '/amount/unit'), 422, 'no-conversion', ['/amount/unit']],
  ])('%s has status %i and the type of its code', (refusal, status, code, pointers) => {
    const problem = toProblem(refusal);
    expect(problem).toMatchObject({ type: `/problems/${code}`, status, detail: refusal.message });
    expect((problem.errors ?? []).map((error) => error.pointer)).toEqual(pointers);
    expect(Problem.parse(problem)).toEqual(problem);
  });

  it('carries the data of the refusal beside the fields of the standard', () => {
    const refusal = new Conflict('not-ready', 'in the way', undefined, { inTheWay: [{ rule: 'layer' }] });
    expect(toProblem(refusal)).toMatchObject({ status: 409, inTheWay: [{ rule: 'layer' }] });
  });

  it.each([
    [new BadRequestException('Unexpected token'), 400, '/problems/invalid-request'],
    [new NotFoundException('Cannot GET /x'), 404, '/problems/not-found'],
    [new PayloadTooLargeException('too large'), 413, '/problems/too-large'],
  ])('is made of what the framework refuses: %s', (error, status, type) => {
    expect(toProblem(error)).toMatchObject({ status, type });
  });

  it.each([
    new Error('password is x'),
    failed({ code: 'XX000' }),
    failed({ code: '23505', constraint: 'other' }),
    'x',
    null,
  ])('tells nothing of an error that nobody foresaw: %s', (error) => {
    const problem = toProblem(error);
    expect(problem).toMatchObject({ type: '/problems/internal', status: 500 });
    expect(JSON.stringify(problem)).not.toMatch(/password|secret|driver|insert/);
  });
});

describe('a database that does not answer', () => {
  it.each([
    ['a lost connection', failed({ code: '08006' })],
    ['a server that stops', failed({ code: '57P01' })],
    ['a statement that took too long', failed({ code: '57014' })],
    ['a server that is gone', Object.assign(new Error('connect'), { code: 'ECONNREFUSED' })],
    ['a pool without a free connection', new Error('timeout exceeded when trying to connect')],
  ])('as %s says to send the same again, and does not claim that nothing was recorded', (_what, error) => {
    const problem = toProblem(error);
    expect(problem).toMatchObject({ type: '/problems/try-later', status: 503 });
    expect(problem.detail).toContain('same id');
    expect(JSON.stringify(problem)).not.toMatch(/secret|driver|insert|[Nn]othing was recorded/);
  });
});

describe('a refusal of the database', () => {
  it.each([
    ['hull_number_once', 'number-taken', '/number'],
    ['lot_code_once', 'code-taken', '/code'],
    ['signature_by_another_person', 'signer-is-maker', '/enteredBy'],
    ['acceptance_by_another_person', 'accepter-is-maker', '/enteredBy'],
    ['lot_input_not_itself', 'lot-made-of-itself', '/inputs'],
  ])('by %s is the refusal %s at %s', (constraint, code, pointer) => {
    const refusal = fromDatabase(failed({ code: '23505', constraint }));
    expect(refusal).toMatchObject({ code, errors: [{ pointer }] });
  });

  it.each(['40001', '40P01', '55P03'])('with SQLSTATE %s asks to send the request again', (code) => {
    expect(toProblem(failed({ code }))).toMatchObject({ type: '/problems/try-again', status: 409 });
  });

  it('is none when the error is not from the database, or has no meaning for users', () => {
    expect(fromDatabase(new Error('hull_number_once'))).toBeUndefined();
    expect(fromDatabase(failed({ code: '23502' }))).toBeUndefined();
  });
});

describe('a JSON pointer (RFC 6901)', () => {
  it.each([
    [[], ''],
    [['used', 0, 'lot'], '/used/0/lot'],
    [[{ key: 'used' }, { key: 1 }], '/used/1'],
    [['a/b', 'm~n'], '/a~1b/m~0n'],
    [[''], '/'],
  ])('of %j is "%s"', (path, pointer) => {
    expect(pointerOf({ message: 'm', path })).toBe(pointer);
  });

  it('stands for every issue of a schema, in order', () => {
    const refusal = refusalOf([{ message: 'one', path: ['a'] }, { message: 'two' }]);
    expect(refusal.errors).toEqual([
      { pointer: '/a', detail: 'one' },
      { pointer: '', detail: 'two' },
    ]);
  });
});
