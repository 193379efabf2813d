import type { DefectView, ModelView, PartView } from '@hull-record/contracts';
import { Link } from '@tanstack/react-router';
import { DefectMark } from '../marks/defect-mark.js';
import { placeWords, sizeWords } from '../record/defect-words.js';
import { Verdicts } from '../record/verdicts.js';
import { Table, type Column } from '../ui/table.js';
import { Day } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { HullMap } from '../skin/hull-map.js';

interface DefectsProps {
  readonly part: PartView;
  readonly model: ModelView | undefined;
}

const rowId = ({ id }: DefectView): string => `defect-${id}`;

/** The defects of a part: on the hull map, and as a list. */
export const Defects = ({ part, model }: DefectsProps) => {
  const { t, term } = useWords();
  const columns = useColumns();
  const skin = model?.skins[part.kind as keyof ModelView['skins']];
  return (
    <>
      <h3>{t('record.defects')}</h3>
      <div className="map-and-list">
        {skin === undefined ? (
          <p className="soft">{t('hulls.noMap', { model: part.model, kind: term(part.kind) })}</p>
        ) : (
          <HullMap part={part} skin={skin} rowId={rowId} />
        )}
        <div>
          {part.defects.length === 0 ? (
            <p>{t('hulls.noDefects')}</p>
          ) : (
            <Table
              caption={t('hulls.defectsOf', { part: part.number })}
              columns={columns}
              rows={part.defects}
              rowId={rowId}
            />
          )}
        </div>
      </div>
    </>
  );
};

const useColumns = (): readonly Column<DefectView>[] => {
  const words = useWords();
  const { t } = words;
  return [
    { head: t('hulls.mark'), cell: ({ mark }) => mark, names: true, class: 'n' },
    {
      head: t('record.defect'),
      cell: (defect) => (
        <>
          <b>{words.kind(defect.kind)}</b> {sizeWords(defect, words)}
          <Note of={defect} />
        </>
      ),
    },
    { head: t('record.layer'), cell: ({ layer }) => layer ?? t('record.notKnown'), class: 'n' },
    { head: t('record.place'), cell: (defect) => placeWords(defect, words) },
    {
      head: t('record.found'),
      cell: ({ happenedAt, by }) => <Text of="hulls.foundBy" with={{ day: <Day at={happenedAt} />, by }} />,
    },
    { head: t('record.outcome'), cell: (defect) => <Outcome of={defect} /> },
    {
      head: t('app.nav.lots'),
      cell: ({ id, mark, part, state }) => (
        <>
          <Link to="/defects/$defect" params={{ defect: id }}>
            {t('hulls.lotsAt', { mark })}
          </Link>
          {state === 'open' || state === 'repair to be accepted' ? (
            <p>
              <Link to="/station/bay/$part" params={{ part }}>
                {t('hulls.workOn', { mark })}
              </Link>
            </p>
          ) : null}
        </>
      ),
      class: 'nb',
    },
  ];
};

const Note = ({ of: { note, photos } }: { readonly of: DefectView }) => {
  const { t } = useWords();
  return (
    <>
      {note === null ? null : (
        <p className="note">
          <Said text={note} />
        </p>
      )}
      {photos.map(({ id }, i) => (
        <p key={id} className="note">
          <a href={`/api/photos/${encodeURIComponent(id)}`}>
            <img
              className="photo"
              src={`/api/photos/${encodeURIComponent(id)}`}
              alt={t('hulls.photo', { number: i + 1 })}
              width={120}
              height={90}
              loading="lazy"
            />
          </a>
        </p>
      ))}
    </>
  );
};

const Outcome = ({ of: { state, concession, repairs, verdicts } }: { readonly of: DefectView }) => {
  const { term } = useWords();
  const under = concession === null ? '' : ` ${concession}`;
  const by = repairs.length === 0 ? '' : `, ${repairs.join(', ')}`;
  return (
    <>
      <DefectMark state={state}>{`${term(state)}${under}${by}`}</DefectMark>
      <Verdicts verdicts={verdicts} />
    </>
  );
};
