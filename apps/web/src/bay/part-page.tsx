import type { DefectView, PartView } from '@hull-record/contracts';
import { getRouteApi, Link } from '@tanstack/react-router';
import { DefectMark } from '../marks/defect-mark.js';
import { placeWords, sizeWords } from '../record/defect-words.js';
import { HullMap } from '../skin/hull-map.js';
import { Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { PartFrame } from './part-frame.js';
import { judgeable } from './judgeable.js';

const route = getRouteApi('/station/bay/$part');

const rowId = ({ id }: DefectView): string => `defect-${id}`;

/** One part in the bay: what there is to do on it, and its defects on the hull map. */
export const PartPage = () => {
  const { t } = useWords();
  const { part: number } = route.useParams();
  return (
    <PartFrame number={number} task={t('bay.title')}>
      {({ part, skin }) => (
        <>
          <Tasks part={part} />
          <Section name={t('bay.defectsOf', { part: number })}>
            {skin === undefined ? (
              <p className="soft">{t('bay.noMap')}</p>
            ) : (
              <HullMap part={part} skin={skin} rowId={rowId} />
            )}
            <Defects part={part} />
          </Section>
        </>
      )}
    </PartFrame>
  );
};

const Tasks = ({ part }: { readonly part: PartView }) => {
  const { t, term } = useWords();
  const at = { params: { part: part.number } };
  const open = part.defects.filter(({ state }) => state === 'open').length;
  return (
    <nav aria-label={t('bay.toDo')}>
      <ul className="plain tasks">
        <li>
          <Link className="task" to="/station/bay/$part/defect" {...at}>
            {t('bay.logDefect')}
          </Link>
        </li>
        {open === 0 ? null : (
          <li>
            <Link className="task" to="/station/bay/$part/repair" {...at}>
              {t('bay.repairs', { count: open })}
            </Link>
          </li>
        )}
        <li>
          <Link className="task" to="/station/bay/$part/touch-up" {...at}>
            {t('bay.touchUp')}
          </Link>
        </li>
        {judgeable(part).map(({ mark, waits }) => (
          <li key={mark}>
            <Link className="task" to="/station/bay/$part/judge/$mark" params={{ part: part.number, mark }}>
              {waits ? t('bay.accept', { mark }) : t('bay.inspectAgain', { mark })}
            </Link>
          </li>
        ))}
        {part.defects
          .filter(({ asks }) => asks.includes('bucket or gun'))
          .map(({ id, mark, asks }) => (
            <li key={id}>
              <Link className="task" to="/station/bay/$part/answer/$mark" params={{ part: part.number, mark }}>
                {t('bay.answer', { mark, asks: asks.map(term).join(', ') })}
              </Link>
            </li>
          ))}
      </ul>
    </nav>
  );
};

const Defects = ({ part: { defects } }: { readonly part: PartView }) => {
  const words = useWords();
  const { t, term, kind } = words;
  if (defects.length === 0) return <p>{t('hulls.noDefects')}</p>;
  return (
    <ul className="plain found">
      {defects.map((defect) => (
        <li key={defect.id} id={rowId(defect)} tabIndex={-1}>
          <DefectMark state={defect.state}>
            <b className="n">{defect.mark}</b> {kind(defect.kind)} {sizeWords(defect, words)}, {term(defect.state)}
          </DefectMark>
          <p className="soft">{placeWords(defect, words)}</p>
        </li>
      ))}
    </ul>
  );
};
