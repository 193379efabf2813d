import { useState } from 'react';
import type { FileClaim as Sent, HullView } from '@hull-record/contracts';
import { DEFECT_KINDS, type Skin } from '@hull-record/trade';
import { post } from '../api/ask.js';
import { decimal, given, type FieldGroup, type Said } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import type { Words } from '../words/words.js';
import { useWords } from '../words/use-words.js';
import { FOUND_BY } from './found-by.js';
import { NO_SPOT, spotsOf, type SpotDraft } from './spot-draft.js';
import { SpotFields } from './spot-fields.js';

interface FileClaimProps {
  readonly hull: HullView;
  /** Of the hull molding; undefined when the model has none on record. */
  readonly skin: Skin | undefined;
  readonly dealers: readonly { readonly code: string; readonly name: string }[];
  readonly onFiled: (claim: string) => void;
}

const COATINGS = ['removed at the spots', 'on', 'not known'] as const;

/** What was reported of a hull: what, when, where on it, and what a survey showed. */
export const FileClaim = ({ hull, skin, dealers, onFiled }: FileClaimProps) => {
  const words = useWords();
  const { t } = words;
  const [spots, setSpots] = useState<readonly SpotDraft[]>([NO_SPOT]);
  const molding = hull.parts.find(({ kind }) => kind === 'hull molding')?.number;
  return (
    <RecordForm
      groups={[reported(words, dealers), survey(words)]}
      first={{ foundBy: 'owner or dealer', coating: 'not known' }}
      button={t('claims.fileDo')}
      send={(said, envelope) =>
        post('/api/hulls/:number/claims', { number: hull.number }, { ...envelope, ...bodyOf(said), ...spotsOf(spots) })
      }
      onDone={({ id }) => onFiled(id)}
      done={({ result }) => (
        <Found
          of={{ result: { warnings: result.says } }}
          words={t('claims.filed', { mark: result.mark, defects: result.defects.join(', ') || t('record.none') })}
        />
      )}
    >
      {() => (
        <div className="wide">
          <Fold summary={t('claims.whereOnHull')} open>
            <SpotFields part={molding} skin={skin} spots={spots} onSpots={setSpots} />
          </Fold>
          <p className="note soft">{t('claims.noPersonal')}</p>
        </div>
      )}
    </RecordForm>
  );
};

const reported = ({ t, term, kind }: Words, dealers: FileClaimProps['dealers']): FieldGroup => ({
  name: t('claims.reported'),
  fields: [
    {
      ...{ name: 'kind', label: t('claims.kind'), kind: 'choice' },
      options: DEFECT_KINDS.map(({ code }) => [code, kind(code)]),
    },
    { name: 'reportedOn', label: t('claims.reportedOn'), kind: 'day' },
    { name: 'noticedOn', label: t('claims.noticedOn'), kind: 'day', hint: t('claims.noticedHint') },
    { name: 'symptoms', label: t('claims.symptoms'), kind: 'words', hint: t('claims.symptomsHint') },
    { name: 'grade', label: t('claims.grade'), hint: t('claims.gradeHint') },
    {
      ...{ name: 'looks', label: t('claims.looks'), kind: 'choice' },
      options: [
        ['round', term('round')],
        ['irregular', term('irregular')],
      ],
    },
    {
      ...{ name: 'dealer', label: t('claims.dealer'), kind: 'choice', none: t('claims.dealerOfHull') },
      options: dealers.map(({ code, name }) => [code, `${code}, ${name}`]),
    },
    { name: 'reference', label: t('claims.reference'), hint: t('claims.referenceHint') },
    {
      ...{ name: 'foundBy', label: t('claims.foundBy'), kind: 'choice' },
      options: FOUND_BY.map((each) => [each, term(each)]),
    },
  ],
});

const survey = ({ t, term }: Words): FieldGroup => ({
  name: t('claims.survey'),
  fields: [
    { name: 'hoursAshore', label: t('claims.hoursAshore'), kind: 'decimal', hint: t('claims.hoursAshoreHint') },
    { name: 'meter', label: t('claims.meter'), kind: 'words', pointer: '/moisture/meter' },
    { name: 'scale', label: t('claims.scale'), hint: t('claims.scaleHint'), kind: 'words', pointer: '/moisture/scale' },
    {
      ...{ name: 'coating', label: t('claims.coating'), kind: 'choice', pointer: '/moisture/coating' },
      options: COATINGS.map((each) => [each, term(each)]),
    },
    {
      ...{ name: 'readings', label: t('claims.readingsTyped'), kind: 'words', pointer: '/moisture/readings' },
      hint: t('claims.readingsHint'),
    },
  ],
});

type Body = Omit<Sent, 'id' | 'enteredBy' | 'device' | 'happenedAt' | 'spots' | 'station'>;

const bodyOf = (said: Said): Body => ({
  kind: said('kind'),
  reportedOn: said('reportedOn'),
  symptoms: said('symptoms'),
  foundBy: said('foundBy') as Sent['foundBy'],
  ...given('noticedOn', said('noticedOn')),
  ...given('grade', said('grade').toUpperCase()),
  ...(given('looks', said('looks')) as Pick<Sent, 'looks'>),
  ...given('dealer', said('dealer')),
  ...given('reference', said('reference')),
  ...(said('hoursAshore').trim() === '' ? {} : { hoursAshore: Number(decimal(said('hoursAshore'))) }),
  ...moistureOf(said),
});

/** The readings stand one after the other; a comma in one is a decimal mark. */
const moistureOf = (said: Said): Pick<Sent, 'moisture'> => {
  const typed = ['meter', 'scale', 'readings'].map((name) => said(name).trim());
  if (typed.every((each) => each === '')) return {};
  const readings = said('readings')
    .split(/[\s;]+/)
    .filter((each) => each !== '')
    .map((each) => ({ value: Number(decimal(each)) }));
  const coating = said('coating') as (typeof COATINGS)[number];
  return { moisture: { meter: said('meter').trim(), scale: said('scale').trim(), coating, readings } };
};
