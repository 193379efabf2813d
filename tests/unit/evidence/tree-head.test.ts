import { describe, expect, it } from '@jest/globals';
import { createHash } from 'node:crypto';
import {
  canonicalJson,
  checkHead,
  headHash,
  headLine,
  Malformed,
  NotJson,
  readHead,
  signedText,
  signerOf,
  signTreeHead,
  type TreeHead,
} from '@hull-record/evidence';
import { OTHER_KEY, PLANT_KEY, TRUSTED, TRUSTED_OTHER } from '../../support/signed-journal.js';
import { journalEntries, signedJournal } from '../../support/signed-journal.js';

const { head } = signedJournal(journalEntries(5));
const { plant, size, root, at, previous } = head;
const TOLD: TreeHead = { plant, size, root, at, previous };

describe('a signed tree head', () => {
  it('is over the canonical text of all it says, the key and what it is included', () => {
    expect(Object.keys(JSON.parse(signedText(head))).sort()).toEqual([
      'at',
      'format',
      'keyId',
      'plant',
      'previous',
      'publicKey',
      'root',
      'size',
    ]);
    expect(signedText(head)).toBe(
      `{"at":"${at}","format":"hull-record/tree-head/1","keyId":"${head.keyId}","plant":"MAIN","previous":null,` +
        `"publicKey":"${head.publicKey}","root":"${root}","size":5}`,
    );
  });

  it('is one line that can be mailed and read again, with one line ending after it or none', () => {
    const line = headLine(head);
    expect(line).not.toMatch(/[\r\n]/);
    for (const sent of [line, `${line}\n`, `${line}\r\n`])
      for (const given of [sent, Buffer.from(sent)]) {
        expect(readHead(given)).toEqual(head);
        expect(checkHead(readHead(given))).toBeNull();
      }
  });

  it('is named by SHA-256 of its line, which the next head says', () => {
    expect(headHash(head)).toBe(createHash('sha256').update(headLine(head)).digest('hex'));
    const next = signTreeHead({ ...TOLD, previous: headHash(head) }, PLANT_KEY);
    expect(checkHead(next)).toBeNull();
    expect(headHash(next)).not.toBe(headHash(head));
  });

  it('is the same whenever the same is signed by the same key', () => {
    expect(signTreeHead(TOLD, PLANT_KEY)).toEqual(head);
  });

  it.each([
    ['two line endings', `${headLine(head)}\n\n`],
    ['a space before it', ` ${headLine(head)}`],
    ['members in another order', JSON.stringify({ ...TOLD, ...head })],
    ['a member too many', canonicalJson({ ...head, note: '' })],
    ['a member too few', signedText(head)],
    ['a list', canonicalJson([head])],
    ['null', 'null'],
  ])('is not read from %s', (_what, line) => {
    expect(() => readHead(line)).toThrow(Malformed);
    expect(() => readHead(Buffer.from(line))).toThrow(Malformed);
  });

  it.each<[keyof TreeHead, unknown]>([
    ['plant', ''],
    ['size', -1],
    ['size', 1.5],
    ['size', '5'],
    ['size', 2 ** 53],
    ['root', root.toUpperCase()],
    ['root', root.slice(2)],
    ['root', `${root}\n`],
    ['root', undefined],
    ['at', '2026-04-11T09:30:00Z'],
    ['at', '2026-02-30T09:30:00.000Z'],
    ['at', '2026-04-11T09:30:00.000+02:00'],
    ['at', '2026-04-11T24:00:00.000Z'],
    ['previous', ''],
    ['previous', undefined],
  ])('is not signed with %s %j', (name, value) => {
    const wrong = { ...TOLD, [name]: value } as TreeHead;
    expect(() => signTreeHead(wrong, PLANT_KEY)).toThrow(
      expect.objectContaining({ name: 'Malformed', at: `/${name}` }),
    );
  });

  it('is not signed with more than it is to say, nor with half of a surrogate pair', () => {
    expect(() => signTreeHead(head, PLANT_KEY)).toThrow(Malformed);
    expect(() => signTreeHead({ ...TOLD, plant: '\ud83d' }, PLANT_KEY)).toThrow(NotJson);
  });
});

describe('checking a head', () => {
  const other = signTreeHead({ ...TOLD, plant: 'NORTH' }, OTHER_KEY);

  it.each([
    ['another plant', { ...head, plant: 'NORTH' }, '/signature'],
    ['another size', { ...head, size: 6 }, '/signature'],
    ['another time', { ...head, at: '2026-04-11T09:30:00.001Z' }, '/signature'],
    ['another previous head', { ...head, previous: root }, '/signature'],
    ['another signature', { ...head, signature: other.signature }, '/signature'],
    ['another key', { ...head, publicKey: other.publicKey }, '/keyId'],
    ['the id of another key', { ...head, keyId: other.keyId }, '/keyId'],
    ['another key and its id', { ...head, publicKey: other.publicKey, keyId: other.keyId }, '/signature'],
    ['a root of no entries that is none', signTreeHead({ ...TOLD, size: 0 }, PLANT_KEY), '/root'],
  ])('finds %s', (_what, wrong, pointer) => {
    expect(checkHead(wrong)).toMatchObject({ at: pointer });
  });

  it('tells for whom the signer is known', () => {
    expect(signerOf(head, [TRUSTED_OTHER, TRUSTED])).toBe('known');
    expect(signerOf(head, [TRUSTED_OTHER])).toBe('unknown');
    expect(signerOf(head, [])).toBe('unknown');
    expect(signerOf(other, [TRUSTED, TRUSTED_OTHER])).toBe('known');
    expect(signerOf(signTreeHead(TOLD, OTHER_KEY), [TRUSTED, TRUSTED_OTHER])).toBe('of another plant');
  });
});
