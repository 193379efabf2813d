import { describe, expect, it } from '@jest/globals';
import { DecideDuty, DisposeHeld, FileClaim, PlaceHold } from '@hull-record/contracts';
import type { z } from 'zod';

const ENVELOPE = {
  ...{ id: '018f0000-0000-7000-8000-00000000abcd', enteredBy: 'QUA-1', device: 'desk' },
  happenedAt: '2026-03-01T12:00:00Z',
};

const faults = (schema: z.ZodType, fields: object): Record<string, string[]> => {
  const { error } = schema.safeParse({ ...ENVELOPE, ...fields });
  const found: Record<string, string[]> = {};
  for (const { path, message } of error?.issues ?? []) (found[path.join('/')] ??= []).push(message);
  return found;
};

describe('what is wrong with a field', () => {
  it('is told in words of a person, once', () => {
    expect(faults(PlaceHold, { kind: 'other', reason: '' })).toEqual({
      kind: ['must be one of: quality, safety'],
      reason: ['is empty: say it'],
    });
    expect(faults(PlaceHold, { kind: 'safety', reason: 'x', minShare: null })).toEqual({
      minShare: ['is missing: say it'],
    });
    expect(faults(PlaceHold, { kind: 'safety', reason: 'x', minShare: 2 })).toEqual({
      minShare: ['must be at most 1'],
    });
    expect(faults(DisposeHeld, { hulls: ['H'], what: '' })).toMatchObject({ what: ['is empty: say it'] });
    expect(faults(DecideDuty, { decision: 'none', decidedBy: 'QUA-1', why: 'x', discoveredOn: '2' })).toEqual({
      discoveredOn: ['must be a day, such as 2026-03-01'],
    });
    expect(faults(DecideDuty, { decision: 'none', decidedBy: 7, why: 'x', discoveredOn: '1800-01-01' })).toEqual({
      decidedBy: ['must be text'],
      discoveredOn: ['must be a year from 1900 on'],
    });
    expect(
      faults(FileClaim, { happenedAt: 'noon', kind: 'blister', reportedOn: '', symptoms: 'x'.repeat(2_001) }),
    ).toEqual({
      happenedAt: ['must be an instant with its zone, such as 2026-03-01T12:00:00Z'],
      reportedOn: ['is empty: say it'],
      symptoms: ['must have at most 2000 characters'],
    });
  });
});
