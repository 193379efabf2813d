import { describe, expect, it } from '@jest/globals';
import {
  CAUTIONS,
  DEFECT_KINDS,
  defectKindsCalled,
  isDefectKind,
  isMaterialRole,
  MATERIAL_ROLES,
  type CautionedWork,
} from '@hull-record/trade';

describe('kinds of defect', () => {
  const codes = DEFECT_KINDS.map(({ code }) => code);

  it('have unique codes in small letters and unique labels', () => {
    expect(new Set(codes).size).toBe(codes.length);
    expect(new Set(DEFECT_KINDS.map(({ label }) => label)).size).toBe(codes.length);
    for (const code of codes) expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });

  it('are the 27 of ASTM D2563 and nine of common practice', () => {
    const bySource = (source: string) => DEFECT_KINDS.filter((kind) => kind.source === source);
    expect(bySource('ASTM D2563 (withdrawn 2024; vocabulary only)')).toHaveLength(27);
    expect(bySource('common practice').map(({ code }) => code)).toEqual([
      'prerelease',
      'alligatoring',
      'catalyst-slug',
      'undercure',
      'gouge',
      'print-through',
      'sag',
      'dry-glass',
      'disbond',
    ]);
  });

  it.each(codes)('%s is a kind', (code) => {
    expect(isDefectKind(code)).toBe(true);
    expect(defectKindsCalled(code)).toEqual([code]);
  });

  it.each(['void', 'pinhole', 'Blister', '', 'toString'])('"%s" is no code of a kind', (text) => {
    expect(isDefectKind(text)).toBe(false);
  });

  it.each([
    ['void', ['air-bubble']],
    ['Air bubble', ['air-bubble']],
    [' Pinhole ', ['pit', 'porosity']],
    ['delamination', ['edge-delamination', 'internal-delamination']],
    ['Orange peel', ['orange-peel']],
    ['rust', []],
  ])('the shop word "%s" may mean %j', (word, kinds) => {
    expect(defectKindsCalled(word)).toEqual(kinds);
  });
});

describe('roles of materials', () => {
  it('are twelve, each once', () => {
    expect(new Set(MATERIAL_ROLES).size).toBe(12);
    expect(MATERIAL_ROLES).toHaveLength(12);
  });

  it.each([
    ['gel coat', true],
    ['bonding paste', true],
    ['gel-coat', false],
    ['Resin', false],
    ['', false],
  ])('"%s" is a role: %s', (text, known) => {
    expect(isMaterialRole(text)).toBe(known);
  });
});

describe('cautions', () => {
  const works = Object.keys(CAUTIONS) as CautionedWork[];

  it('cover laminating, mixing, grinding and repair', () => {
    expect(works.toSorted()).toEqual(['grinding', 'laminating', 'mixing', 'repair']);
  });

  it.each(works)(
    'those for %s end by deferring to data sheet, local codes and licensed or certified people',
    (work) => {
      const last = CAUTIONS[work].at(-1) ?? '';
      for (const words of ['data sheets', 'local codes', 'licensed or certified']) expect(last).toContain(words);
      for (const sentence of CAUTIONS[work]) expect(sentence).toMatch(/\.$/);
    },
  );

  it('those for mixing say first that catalyst and promoter never meet', () => {
    expect(CAUTIONS.mixing[0]).toBe('Never mix catalyst and promoter directly.');
  });
});
