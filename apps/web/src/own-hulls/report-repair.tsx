import { useState } from 'react';
import type { OwnRepairs } from '@hull-record/contracts';
import { DEFECT_KINDS, type Place } from '@hull-record/trade';
import { post } from '../api/ask.js';
import type { FieldGroup } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { WorkCautions } from '../record/work-cautions.js';
import { PlaceFields } from '../skin/place-fields.js';
import { TouchMap } from '../skin/touch-map.js';
import { Where } from '../skin/where.js';
import { Choice } from '../ui/choice.js';
import { Fold } from '../ui/fold.js';
import type { Words } from '../words/words.js';
import { useWords } from '../words/use-words.js';
import { GRIND_OUT, repairOf, STRUCTURE, tickOf } from './repair-body.js';

interface ReportRepairProps extends Pick<OwnRepairs, 'parts' | 'openDefects'> {
  readonly number: string;
}

/** Reports a repair that was done outside the plant: what it put right, where, by whom, with what. */
export const ReportRepair = ({ number, parts, openDefects }: ReportRepairProps) => {
  const words = useWords();
  const { t, term } = words;
  const [chosen, setPart] = useState(parts.find(({ kind }) => kind === 'hull molding')?.number ?? '');
  const part = parts.find((each) => each.number === chosen) ?? parts[0];
  const [place, setPlace] = useState<Place>();
  const there = openDefects.filter((defect) => defect.part === part?.number);
  const choose = (next: string): void => {
    setPart(next);
    setPlace(undefined);
  };
  return (
    <>
      <WorkCautions />
      <p className="note">{t('own.licensed')}</p>
      {parts.length < 2 ? null : (
        <Choice
          {...{ name: 'part', label: t('own.ofPart'), value: part?.number ?? '', wrong: undefined, onChange: choose }}
          options={parts.map((each) => [each.number, `${each.number}, ${term(each.kind)}`])}
          none={t('entry.choose')}
        />
      )}
      <RecordForm
        key={part?.number}
        groups={[answers(words, there), work(words), measures(words), structure(words)]}
        button={t('own.reportDo')}
        send={(said, envelope) =>
          post(
            '/api/own-hulls/:number/outside-repairs',
            { number },
            { ...envelope, ...repairOf(said, part?.number ?? '', there, place) },
          )
        }
        onDone={() => setPlace(undefined)}
        done={(answer) => (
          <Found of={answer} words={t('own.reported', { mark: answer.result.mark, part: answer.result.part })} />
        )}
      >
        {() => (
          <div className="wide">
            {there.length === 0 ? <p className="soft">{t('own.noOpenDefects')}</p> : null}
            <Fold summary={t('own.newPlace')} open={there.length === 0}>
              <Placing part={part} there={there} place={place} onPlace={setPlace} />
            </Fold>
            <p>
              <b>{t('own.notWitnessed')}</b>
            </p>
          </div>
        )}
      </RecordForm>
    </>
  );
};

interface PlacingProps {
  readonly part: OwnRepairs['parts'][number] | undefined;
  readonly there: OwnRepairs['openDefects'];
  readonly place: Place | undefined;
  readonly onPlace: (place: Place) => void;
}

/** Touched on the hull map, or typed as a tape measures it. */
const Placing = ({ part, there, place, onPlace }: PlacingProps) => {
  const { t } = useWords();
  const skin = part?.skin ?? undefined;
  return (
    <>
      {part === undefined || skin === undefined ? (
        <p>{t('own.noMap')}</p>
      ) : (
        <>
          <TouchMap
            part={{ kind: part.kind, number: part.number, defects: there }}
            skin={skin}
            place={place}
            onPlace={onPlace}
          />
          {place === undefined ? null : <Where place={place} skin={skin} />}
        </>
      )}
      <PlaceFields skin={skin} place={place} onPlace={onPlace} />
    </>
  );
};

const answers = ({ t, kind }: Words, there: OwnRepairs['openDefects']): FieldGroup => ({
  name: t('own.answersWhich'),
  fields: [
    ...there.map((defect) => ({
      ...{ name: tickOf(defect.id), kind: 'tick' as const, pointer: '/defects' },
      label: t('own.openDefect', { mark: defect.mark, kind: kind(defect.kind), zone: defect.zone }),
    })),
    {
      ...{ name: 'spotKind', label: t('own.newPlaceKind'), kind: 'choice', pointer: '/spots/0/kind' },
      hint: t('own.newPlaceHint'),
      options: DEFECT_KINDS.map(({ code }) => [code, kind(code)]),
    },
  ],
});

const work = ({ t }: Words): FieldGroup => ({
  name: t('own.work'),
  fields: [
    { name: 'doneOn', label: t('own.doneOn'), kind: 'day', pointer: '/outside/doneOn' },
    { name: 'at', label: t('own.at'), hint: t('own.atHint'), pointer: '/outside/at' },
    { name: 'toldBy', label: t('own.toldBy'), hint: t('own.toldByHint'), pointer: '/outside/toldBy' },
    { name: 'procedure', label: t('own.procedure'), hint: t('own.procedureHint'), kind: 'words' },
    {
      ...{ name: 'material', label: t('own.material'), hint: t('own.materialHint') },
      ...{ kind: 'words', pointer: '/outside/material' },
    },
    { name: 'evidence', label: t('own.evidence'), hint: t('own.evidenceHint'), pointer: '/outside/evidence' },
    { name: 'note', label: t('own.note'), hint: t('own.noteHint'), kind: 'words' },
  ],
});

const GROUND = { lengthMm: 'own.grindLength', widthMm: 'own.grindWidth', depthMm: 'own.grindDepth' } as const;

const measures = ({ t }: Words): FieldGroup => ({
  name: t('own.measures'),
  fields: [
    { name: 'plies', label: t('own.plies'), hint: t('own.pliesHint'), kind: 'lines' },
    { name: 'taperRatio', label: t('own.taperRatio'), kind: 'decimal' },
    ...GRIND_OUT.map((name) => ({
      ...{ name, label: t(GROUND[name]), kind: 'decimal' as const, pointer: `/grindOutMm/${name}` },
    })),
  ],
});

const structure = ({ t }: Words): FieldGroup => ({
  name: t('own.structure'),
  fields: STRUCTURE.map((name, i) => ({
    ...{ name, label: t(`own.${name}`), kind: 'decimal' as const, pointer: `/geometry/${name}` },
    ...(i === 0 ? { hint: t('own.structureLead') } : {}),
  })),
});
