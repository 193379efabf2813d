import { describe, expect, it } from '@jest/globals';
import fc from 'fast-check';
import {
  bundleText,
  canonicalJson,
  leafHash,
  makeBundle,
  NotJson,
  type ProofBundle,
  readBundle,
  signTreeHead,
  type TreeHead,
  verifyBundle,
} from '@hull-record/evidence';
import { turned } from '../../support/grown-tree.js';
import {
  journalEntries,
  OTHER_KEY,
  PLANT_KEY,
  signedJournal,
  TRUSTED,
  TRUSTED_OTHER,
} from '../../support/signed-journal.js';

const journal = signedJournal(journalEntries(11));
const bundle = journal.bundle(5);
const text = bundleText(bundle);
const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex');
const told = ({ plant, size, root, at, previous }: TreeHead): TreeHead => ({ plant, size, root, at, previous });

describe('a proof bundle', () => {
  it('is genuine for every entry of every journal, by a key trusted for its plant', () => {
    for (let size = 1; size <= 20; size++) {
      const whole = signedJournal(journalEntries(size));
      for (let index = 0; index < size; index++)
        expect(verifyBundle(bundleText(whole.bundle(index)), [TRUSTED_OTHER, TRUSTED]).is).toBe('genuine');
    }
  });

  it('says in words what it proves', () => {
    expect(verifyBundle(text, [TRUSTED]).words).toBe(
      'Genuine to a head signed by a trusted key: the content is entry 5 (counted from 0) of the 11 in the journal of ' +
        `plant MAIN, as signed at 2026-04-11T09:30:00.000Z by key ${TRUSTED.keyId}.`,
    );
  });

  it('fits together, but its signer is not known, without a key that is trusted for the plant', () => {
    expect(verifyBundle(text, [])).toMatchObject({ is: 'signer not known', words: /is not known: the key is not/ });
    const other = signedJournal(journalEntries(11), {}, OTHER_KEY).bundle(5);
    expect(verifyBundle(bundleText(other), [TRUSTED]).is).toBe('signer not known');
    const forAnother = verifyBundle(bundleText(other), [TRUSTED, TRUSTED_OTHER]);
    expect(forAnother).toMatchObject({ is: 'signer not known', words: /for another plant alone/ });
  });

  it('is read from text and bytes, with one line ending after it or none', () => {
    for (const given of [text, `${text}\n`, `${text}\r\n`])
      for (const sent of [given, Buffer.from(given)]) {
        expect(readBundle(sent)).toEqual(bundle);
        expect(verifyBundle(sent, [TRUSTED]).is).toBe('genuine');
      }
  });

  it('may hold any content that JSON has a form for', () => {
    fc.assert(
      fc.property(fc.jsonValue({ stringUnit: 'grapheme' }), (content) => {
        const any = signedJournal(['before', content, 'after']).bundle(1);
        expect(verifyBundle(bundleText(any), [TRUSTED]).is).toBe('genuine');
      }),
    );
  });

  it('is not made when it would prove nothing', () => {
    const { content, index, head } = bundle;
    const proof = bundle.proof.map((hash) => Buffer.from(hash, 'hex'));
    expect(makeBundle({ content, index, proof, head })).toEqual(bundle);
    for (const wrong of [
      { content: 'other' },
      { index: 4 },
      { proof: proof.slice(1) },
      { head: { ...head, size: 12 } },
    ])
      expect(() => makeBundle({ content, index, proof, head, ...wrong })).toThrow(RangeError);
    expect(() => makeBundle({ content: () => 1, index, proof, head })).toThrow(NotJson);
  });
});

describe('a bundle that was changed', () => {
  it('is broken by any bit of its bytes turned, whoever is trusted', () => {
    const bytes = Buffer.from(text);
    const passed = Array.from({ length: bytes.length * 8 }, (_, bit) => bit).filter((bit) => {
      const changed = turned(bytes, bit);
      return verifyBundle(changed, [TRUSTED]).is !== 'broken' || verifyBundle(changed, []).is !== 'broken';
    });
    expect(passed).toEqual([]);
  });

  it('is broken by any bit turned, also when the bytes are made a text that hides what is not UTF-8', () => {
    fc.assert(
      fc.property(fc.nat(Buffer.byteLength(text) * 8 - 1), (bit) => {
        const changed = Buffer.from(turned(Buffer.from(text), bit)).toString('utf8');
        expect(verifyBundle(changed, [TRUSTED]).is).toBe('broken');
      }),
      { numRuns: 2_000 },
    );
  });

  it('is broken by bytes left out, put in or exchanged', () => {
    const bytes = [...Buffer.from(text)];
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.nat(5), fc.uint8Array({ maxLength: 5 }), (at, count, put) => {
        const changed = Uint8Array.from(bytes.toSpliced(at, count, ...put));
        fc.pre(Buffer.compare(changed, Buffer.from(text)) !== 0);
        expect(verifyBundle(changed, [TRUSTED]).is).toBe('broken');
      }),
      { numRuns: 1_000 },
    );
  });

  const { head } = bundle;
  const zeros = '00'.repeat(32);
  const other = signTreeHead(told(head), OTHER_KEY);
  const proofWith = (at: number, hash: string): readonly string[] => bundle.proof.with(at, hash);

  it.each<[string, Partial<Record<keyof ProofBundle, unknown>>, string]>([
    ['another content', { content: { kind: 'other' } }, '/leafHash'],
    ['another leaf hash', { leafHash: zeros }, '/leafHash'],
    ['another content with its leaf hash', { content: 1, leafHash: hex(leafHash('1')) }, '/proof'],
    ['another index', { index: 4 }, '/proof'],
    ['an index beyond the journal', { index: 11 }, '/proof'],
    ['a hash of the proof changed', { proof: proofWith(0, zeros) }, '/proof'],
    ['a hash of the proof too few', { proof: bundle.proof.slice(1) }, '/proof'],
    ['a hash of the proof too many', { proof: [...bundle.proof, zeros] }, '/proof'],
    ['no proof', { proof: [] }, '/proof'],
    ['the root of the head changed', { head: { ...head, root: zeros } }, '/head/signature'],
    ['the size of the head changed', { head: { ...head, size: 12 } }, '/head/signature'],
    ['the plant of the head changed', { head: { ...head, plant: 'NORTH' } }, '/head/signature'],
    ['the key of another', { head: { ...head, publicKey: other.publicKey } }, '/head/keyId'],
    ['the signature of another', { head: { ...head, signature: other.signature } }, '/head/signature'],
    [
      'a head that another root was signed for',
      { head: signTreeHead({ ...told(head), root: zeros }, PLANT_KEY) },
      '/proof',
    ],
    ['a head of another size', { head: signTreeHead({ ...told(head), size: 6 }, PLANT_KEY) }, '/proof'],
    ['another format', { format: 'hull-record/proof-bundle/2' }, '/format'],
    ['an index that is a text', { index: '5' }, '/index'],
    ['a proof that is no list', { proof: {} }, '/proof'],
    ['a leaf hash in capitals', { leafHash: bundle.leafHash.toUpperCase() }, '/leafHash'],
    ['no content', { content: undefined }, '/content'],
    ['no head', { head: null }, '/head'],
    ['a head with a member too many', { head: { ...head, note: '' } }, '/head'],
  ])('is broken, and says where: %s', (_what, change, pointer) => {
    const verdict = verifyBundle(canonicalJson({ ...bundle, ...change }), [TRUSTED]);
    expect(verdict).toMatchObject({ is: 'broken', at: pointer, words: expect.stringContaining('Broken at ') });
  });

  it('is refused before it is worked through when its proof is longer than that of any tree', () => {
    const verdict = verifyBundle(canonicalJson({ ...bundle, proof: Array(54).fill(zeros) }), [TRUSTED]);
    expect(verdict.words).toContain('/proof has to be a list of at most 53');
  });

  it.each([
    ['nothing', ''],
    ['a text that is not JSON', 'bundle'],
    ['a list', '[]'],
    ['the bundle spaced out', JSON.stringify(bundle, null, 2)],
    ['the bundle twice', `${text}\n${text}`],
    ['a member too many', canonicalJson({ ...bundle, note: '' })],
    ['a member named twice', `${text.slice(0, -1)},"index":5}`],
    ['brackets without end', '['.repeat(100_000)],
    ['content nested too deep', `{"content":${'['.repeat(100_000)}${']'.repeat(100_000)}}`],
  ])('is broken as a whole: %s', (_what, given) => {
    expect(verifyBundle(given, [TRUSTED])).toMatchObject({ is: 'broken', at: '' });
  });
});
