import { useMutation, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { flawLimitsQuery } from '../../api/queries-of-bay.js';
import { Trouble } from '../../asked/trouble.js';
import { queueEntry } from '../../outbox/queue-entry.js';
import { queuePhotos } from '../../outbox/queue-photos.js';
import { PlaceFields } from '../../skin/place-fields.js';
import { TouchMap } from '../../skin/touch-map.js';
import { Where } from '../../skin/where.js';
import { Fold } from '../../ui/fold.js';
import { TextField } from '../../ui/text-field.js';
import { useWords } from '../../words/use-words.js';
import type { KeptEntry } from '../entry-page.js';
import { KeepEntry } from '../keep-entry.js';
import type { AtPart } from '../part-frame.js';
import { PhotoList } from '../../record/photo-list.js';
import { bodyOf, EMPTY, missingIn, type Draft } from './draft.js';
import { KindPicks } from './kind-picks.js';
import { LayerPicks } from './layer-picks.js';
import { BlisterFields, SizeFields } from './size-fields.js';
import { VerdictNow } from './verdict-now.js';

interface DefectFormProps {
  readonly at: AtPart;
  readonly onKept: (kept: KeptEntry) => void;
}

/** A defect as it is found: where, what, in which layer, how large, with photos; judged while it is entered. */
export const DefectForm = ({ at: { part, skin, materials }, onKept }: DefectFormProps) => {
  const { t } = useWords();
  const [draft, setDraft] = useState(EMPTY);
  const [photos, setPhotos] = useState<readonly File[]>([]);
  const limits = useQuery(flawLimitsQuery);
  const keeping = useMutation({
    mutationFn: () => keepDefect(part.number, draft, photos),
    onSuccess: onKept,
    networkMode: 'always',
  });
  const change = (some: Partial<Draft>): void => setDraft((before) => ({ ...before, ...some }));
  const missing = missingIn(draft, skin);
  return (
    <div className="entry">
      <Placing draft={draft} at={{ part, skin, materials }} onChange={change} />
      <KindPicks kind={draft.kind} onKind={(kind) => change({ kind })} />
      <div className="side-by-side">
        <LayerPicks part={part} materials={materials} layer={draft.layer} onLayer={(layer) => change({ layer })} />
        <div>
          <h2>{t('bay.size')}</h2>
          <SizeFields draft={draft} onChange={change} />
        </div>
      </div>
      {draft.kind === 'blister' ? <BlisterFields draft={draft} onChange={change} /> : null}
      <PhotoList photos={photos} onPhotos={setPhotos} />
      <TextField
        label={t('bay.note')}
        hint={t('bay.noteHint')}
        kind="lines"
        value={draft.note}
        onChange={(note) => change({ note })}
      />
      {draft.kind === '' || limits.data !== undefined || limits.error === null ? null : (
        <Trouble what={t('bay.limits')} error={limits.error} again={() => void limits.refetch()} />
      )}
      <VerdictNow draft={draft} limits={limits.data} hull={part.hull} />
      <KeepEntry missing={missing.map((each) => t(`bay.missing.${each}`))} keeping={keeping}>
        {t('bay.saveDefect')}
      </KeepEntry>
      <p className="soft small">{t('bay.doNotGrind')}</p>
    </div>
  );
};

interface PlacingProps {
  readonly at: AtPart;
  readonly draft: Draft;
  readonly onChange: (change: Partial<Draft>) => void;
}

const Placing = ({ at: { part, skin }, draft: { place }, onChange }: PlacingProps) => {
  const { t } = useWords();
  const fields = <PlaceFields skin={skin} place={place} onPlace={(next) => onChange({ place: next })} />;
  if (skin === undefined)
    return (
      <>
        <p>{t('bay.noMap')}</p>
        {fields}
      </>
    );
  return (
    <section className="placing">
      <h2>{t('bay.touchHull')}</h2>
      <TouchMap part={part} skin={skin} place={place} onPlace={(next) => onChange({ place: next })} />
      {place === undefined ? null : <Where place={place} skin={skin} />}
      <Fold summary={t('map.typed')}>{fields}</Fold>
    </section>
  );
};

/** Keeps the defect and, after it, each of its photos. */
const keepDefect = async (part: string, draft: Draft, photos: readonly File[]): Promise<KeptEntry> => {
  const { place } = draft;
  if (place === undefined) throw new Error('A defect without a place is not kept.');
  const about = { lanes: [part], about: part, detail: draft.kind };
  const id = await queueEntry('/api/parts/:part/defects', { part }, bodyOf({ ...draft, place }), about);
  const defect = { entry: id, part: null };
  return { id, lost: await queuePhotos('/api/defects/:defect/photos', { defect }, {}, about, photos) };
};
