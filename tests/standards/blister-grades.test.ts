import { describe, expect, it } from '@jest/globals';
import { compareD714, D714_GRADES, formatD714, parseD714, type D714Grade } from '@hull-record/trade';
import { publishedCases } from '../support/published-cases.js';

publishedCases('blister-grades');

const grade = (text: string): D714Grade => {
  const parsed = parseD714(text);
  if (parsed === undefined) throw new Error(`${text} is no grade`);
  return parsed;
};

describe('blister grades of ASTM D714', () => {
  it.each([
    '10',
    ...['8', '6', '4', '2'].flatMap((size) => ['F', 'M', 'MD', 'D'].map((frequency) => size + frequency)),
  ])('%s is a grade (D714-02(2009) 4.2 and 4.3)', (text) => {
    expect(formatD714(grade(text))).toBe(text);
  });

  it('there are seventeen grades (derived: one without blisters, four sizes by four frequencies)', () => {
    expect(new Set(D714_GRADES.map(formatD714)).size).toBe(17);
  });

  it.each(['7M', '10F', '4', '', '8f', ' 8F', '8 F', '8FD', '0', '0D', 'F8', '8DM'])(
    '"%s" is no grade (D714-02(2009) 4.2 and 4.3)',
    (text) => {
      expect(parseD714(text)).toBeUndefined();
    },
  );

  it.each([
    ['10', '8F', '4.2: 10 is no blistering'],
    ['8F', '6F', '4.2: smaller numbers are larger blisters'],
    ['6F', '4M', '4.2: smaller numbers are larger blisters'],
    ['4M', '2D', '4.2: smaller numbers are larger blisters'],
    ['8F', '2D', '4.2: smaller numbers are larger blisters'],
    ['4F', '4M', '4.3: few, medium'],
    ['4M', '4MD', '4.3: medium, medium dense'],
    ['4MD', '4D', '4.3: medium dense, dense'],
  ])('%s is milder than %s (D714 %s)', (milder, worse) => {
    expect(compareD714(grade(milder), grade(worse))).toBeLessThan(0);
    expect(compareD714(grade(worse), grade(milder))).toBeGreaterThan(0);
  });

  it('sorts 8F, 6F, 4M, 2D from mild to severe, which is not the order of the numbers (D714 4.2)', () => {
    const sorted = ['2D', '6F', '8F', '4M'].map(grade).toSorted(compareD714).map(formatD714);
    expect(sorted).toEqual(['8F', '6F', '4M', '2D']);
  });
});
