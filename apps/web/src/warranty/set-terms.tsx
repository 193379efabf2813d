import { useState } from 'react';
import { post } from '../api/ask.js';
import { decimal, type FieldGroup, type Said } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Button } from '../ui/button.js';
import type { Words } from '../words/words.js';
import { useWords } from '../words/use-words.js';
import { kindsTyped } from './kinds-typed.js';

const STARTS = [
  'warranty registered',
  'sold to first purchaser',
  'at dealer',
  'left the place of manufacture',
] as const;

/** Publishes the next version of the terms of a model. What is published never changes. */
export const SetTerms = ({ model }: { readonly model: string }) => {
  const words = useWords();
  const { t } = words;
  const [covers, setCovers] = useState(2);
  return (
    <RecordForm
      groups={[
        whole(words),
        starts(words),
        ...Array.from({ length: covers }, (_, i) => cover(words, i)),
        { fields: [{ name: 'reason', label: t('record.reason'), kind: 'words' }] },
      ]}
      first={{ 'starts 0': 'yes', 'starts 1': 'yes', carries: 'yes' }}
      button={t('warranty.setDo')}
      sure={() => t('warranty.setSure')}
      send={(said, envelope) =>
        post('/api/models/:model/warranty-terms', { model }, { ...envelope, ...termsOf(said, covers, words) })
      }
      done={({ result }) => (
        <Found of={{ result: {} }} words={t('warranty.setNow', { model, version: result.version })} />
      )}
    >
      {() => (
        <div className="wide">
          <Button onPress={() => setCovers(covers + 1)}>{t('warranty.anotherCover')}</Button>
        </div>
      )}
    </RecordForm>
  );
};

const whole = ({ t }: Words): FieldGroup => ({
  fields: [
    { name: 'fromModelYear', label: t('warranty.fromModelYear'), kind: 'decimal' },
    { name: 'toModelYear', label: t('warranty.toModelYear'), kind: 'decimal' },
    { name: 'carries', label: t('warranty.carriesTick'), kind: 'tick', pointer: '/transfer/carries' },
    {
      ...{ name: 'untilYears', label: t('warranty.untilYears'), kind: 'decimal', pointer: '/transfer/untilYears' },
      hint: t('warranty.untilYearsHint'),
    },
    { name: 'exclusions', label: t('warranty.exclusions'), kind: 'lines', hint: t('warranty.exclusionsHint') },
  ],
});

const starts = ({ t, term }: Words): FieldGroup => ({
  name: t('warranty.starts'),
  fields: STARTS.map((each, i) => ({
    ...{ name: `starts ${i}`, label: term(each), kind: 'tick' as const },
    ...(i === 0 ? { pointer: '/starts' } : {}),
  })),
});

const cover = ({ t }: Words, i: number): FieldGroup => ({
  name: t('warranty.coverOf', { number: i + 1 }),
  fields: [
    {
      ...{ name: `kinds ${i}`, label: t('warranty.kinds'), kind: 'words', pointer: `/covers/${i}/kinds` },
      hint: t('warranty.kindsHint'),
    },
    { name: `years ${i}`, label: t('warranty.years'), kind: 'decimal', pointer: `/covers/${i}` },
    {
      ...{ name: `bears ${i}`, label: t('warranty.bears'), kind: 'words', pointer: `/covers/${i}/bearsPercent` },
      hint: t('warranty.bearsHint'),
    },
  ],
});

const termsOf = (said: Said, covers: number, words: Words) => ({
  fromModelYear: Number(said('fromModelYear')),
  toModelYear: Number(said('toModelYear')),
  starts: STARTS.filter((_, i) => said(`starts ${i}`) === 'yes'),
  covers: Array.from({ length: covers }, (_, i) => i)
    .filter((i) => ['kinds', 'years', 'bears'].some((name) => said(`${name} ${i}`).trim() !== ''))
    .map((i) => ({
      kinds: kindsTyped(said(`kinds ${i}`), words.kind),
      years: Number(said(`years ${i}`)),
      bearsPercent: said(`bears ${i}`)
        .split(/[\s;]+/)
        .filter((each) => each !== '')
        .map((each) => Number(decimal(each))),
    })),
  transfer: {
    carries: said('carries') === 'yes',
    ...(said('untilYears').trim() === '' ? {} : { untilYears: Number(said('untilYears')) }),
  },
  exclusions: said('exclusions')
    .split('\n')
    .map((each) => each.trim())
    .filter((each) => each !== ''),
  reason: said('reason'),
});
