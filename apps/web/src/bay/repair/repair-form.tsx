import { useMutation } from '@tanstack/react-query';
import { useState } from 'react';
import { queueEntry } from '../../outbox/queue-entry.js';
import { hadRoom, queuePhotos } from '../../outbox/queue-photos.js';
import { placeWords, sizeWords } from '../../record/defect-words.js';
import { Checks } from '../../ui/checks.js';
import { MeasureField } from '../../ui/measure-field.js';
import { TextField } from '../../ui/text-field.js';
import { useWords } from '../../words/use-words.js';
import { TakenList } from '../materials/taken-list.js';
import { queuePhotosOfRows } from '../materials/queue-photos-of-rows.js';
import { DoneBy } from '../done-by.js';
import type { KeptEntry } from '../entry-page.js';
import { KeepEntry } from '../keep-entry.js';
import type { AtPart } from '../part-frame.js';
import { PhotoList } from '../../record/photo-list.js';
import { OrderSheet } from './order-sheet.js';
import { PlanFields } from './plan-fields.js';
import {
  emptyRepair,
  missingInRepair,
  readingsBody,
  repairBody,
  workOut,
  type RepairDraft,
  type WorkedOut,
} from './repair-draft.js';
import { WorkCautions } from '../../record/work-cautions.js';

interface RepairFormProps {
  readonly at: AtPart;
  readonly badge: string;
  readonly onKept: (kept: KeptEntry) => void;
}

/** A repair from its order to handing it back: which defects, how it is ground and laid up, and what was really done. */
export const RepairForm = ({ at: { part }, badge, onKept }: RepairFormProps) => {
  const words = useWords();
  const { t, kind } = words;
  const open = part.defects.filter(({ state }) => state === 'open');
  const [draft, setDraft] = useState(() => emptyRepair(open.length === 1 ? open.map(({ id }) => id) : [], badge));
  const change = (some: Partial<RepairDraft>): void => setDraft((before) => ({ ...before, ...some }));
  const worked = workOut(part, draft);
  const procedure = draft.procedure ?? t('bay.procedureUsual', { ratio: draft.ratio });
  const keeping = useMutation({
    networkMode: 'always',
    mutationFn: () => keepRepair(part.number, draft, worked, procedure),
    onSuccess: onKept,
  });
  const missing = missingInRepair(draft, worked);
  if (open.length === 0) return <p>{t('bay.noRepairs')}</p>;
  return (
    <div className="entry">
      <Checks
        label={t('bay.whichDefects')}
        chosen={draft.chosen}
        options={open.map((defect) => ({
          value: defect.id,
          words: (
            <>
              <b className="n">{defect.mark}</b> {kind(defect.kind)} {sizeWords(defect, words)}
              <span className="soft"> {placeWords(defect, words)}</span>
            </>
          ),
        }))}
        onChoose={(chosen) => change({ chosen })}
      />
      {draft.chosen.length === 0 ? null : (
        <>
          <WorkCautions />
          <PlanFields draft={draft} worked={worked} onChange={change} />
          <OrderSheet part={part} worked={worked} />
          <Done draft={draft} worked={worked} procedure={procedure} onChange={change} />
        </>
      )}
      <KeepEntry missing={missing.map((each) => t(`bay.lacks.${each}`))} keeping={keeping}>
        {t('bay.handBack')}
      </KeepEntry>
    </div>
  );
};

interface DoneProps {
  readonly draft: RepairDraft;
  readonly worked: WorkedOut;
  readonly procedure: string;
  readonly onChange: (change: Partial<RepairDraft>) => void;
}

/** What was done: by which procedure, with what, by whom, how hard it became, and how it looks. */
const Done = ({ draft, worked: { order, plan }, procedure, onChange }: DoneProps) => {
  const { t } = useWords();
  const planned = order?.patch?.thicknessMm ?? plan.depthMm;
  const patch = draft.patch === '' && Number.isFinite(planned) ? String(Math.round(planned * 10) / 10) : draft.patch;
  return (
    <section className="done-work">
      <h2>{t('bay.done')}</h2>
      <TextField
        label={t('bay.procedure')}
        kind="lines"
        value={procedure}
        onChange={(typed) => onChange({ procedure: typed })}
      />
      <MeasureField
        label={t('bay.patch')}
        value={patch}
        onChange={(typed) => onChange({ patch: typed === '' ? ' ' : typed })}
      />
      <TakenList rows={draft.used} onRows={(used) => onChange({ used })} />
      <div className="side-by-side">
        <TextField
          label={t('bay.barcol')}
          hint={t('bay.barcolHint')}
          kind="text"
          value={draft.barcol}
          onChange={(barcol) => onChange({ barcol })}
        />
        <TextField
          label={t('bay.impressor')}
          hint={t('bay.impressorHint')}
          kind="text"
          value={draft.impressor}
          onChange={(impressor) => onChange({ impressor })}
        />
      </div>
      <DoneBy value={draft.doneBy} onChange={(doneBy) => onChange({ doneBy })} />
      <PhotoList photos={draft.photos} onPhotos={(photos) => onChange({ photos })} />
    </section>
  );
};

/** Keeps the repair; after it its readings, the photos of material that nobody can name, and each with the first of its defects. */
const keepRepair = async (
  part: string,
  draft: RepairDraft,
  worked: WorkedOut,
  procedure: string,
): Promise<KeptEntry> => {
  const marks = worked.defects.map(({ mark }) => mark).join(', ');
  const about = { lanes: [part], about: `${part}, ${marks}` };
  const id = await queueEntry('/api/parts/:part/repairs', { part }, repairBody(draft, worked, procedure), about);
  const readings = readingsBody(draft);
  const keepReadings = async (): Promise<boolean> =>
    readings === null ||
    hadRoom(
      queueEntry('/api/repairs/:repair/readings', { repair: { entry: id, part: null } }, readings, {
        ...{ ...about, detail: `${draft.barcol} Barcol` },
      }),
    );
  const lostReadings = (await keepReadings()) ? null : { readings: draft.barcol, keep: keepReadings };
  const ofMaterial = await queuePhotosOfRows(id, draft.used, about);
  const [first] = worked.defects;
  if (first === undefined) return { id, lost: ofMaterial, lostReadings };
  const ofDefect = await queuePhotos('/api/defects/:defect/photos', { defect: first.id }, {}, about, draft.photos);
  return { id, lost: ofMaterial + ofDefect, lostReadings };
};
