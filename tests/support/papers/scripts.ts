/** Invented notes in many scripts; all but the signs of `UNPRINTED` have glyphs. */
export const WRITINGS: readonly (readonly [script: string, text: string])[] = [
  ['Arabic with figures, between marks of direction', '\u200fالعينة 12 من 40\u200e'],
  ['Arabic with a unit, a date and a code', 'طبقة الجل (بيضاء)، سُمك 18 mil في 2026-07-19، الدفعة VE-2231/8'],
  ['Arabic with its own figures', 'العدد ١٢٣ و 456'],
  ['Persian with letters kept apart', 'می\u200cخواهم ۱۲۳ پ'],
  ['Hebrew in brackets and quotes', 'שלום (עולם) 12, "גליל" 3.5 מ׳'],
  ['English about an Arabic name', 'Layer مرحبا, 18 kg (weighed), then 12'],
  ['Chinese, also rare characters', '船体记录：第三层「胶衣」，厚度 18 mil。喆堃'],
  ['Chinese in traditional characters', '船體記錄 樹脂'],
  ['Japanese kana', 'カタカナ ひらがな ー'],
  ['Korean', '한국어 선체 기록'],
  ['Russian and Ukrainian', 'Смола винилэфирная, партия №7, їжак ґ'],
  ['Greek with a micro sign', 'Ρητίνη μέτρο 16 μm ἀρχή'],
  ['Vietnamese', 'Nhựa vinyl ester, lô số ấ ế'],
];

/** A boat, and Devanagari and Thai, which no font has. */
export const UNPRINTED = '🚤 हि ไ';
export const AS_CODE_POINTS = '[U+1F6A4][U+0939][U+093F][U+0E44]';

/** A text as it is read back: without spaces, nor marks that have no glyph. */
export const asRead = (text: string): string => text.normalize('NFC').replace(/[\s\u200c\u200e\u200f]/gu, '');
