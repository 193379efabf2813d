import { checkPlace, girthAt, locate, type Place, type Skin } from '@hull-record/trade';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface WhereProps {
  readonly place: Place;
  readonly skin: Skin;
}

/** Where a mark is, in words: side and height first, then the distances that a tape measures. */
export const Where = ({ place, skin }: WhereProps) => {
  const { t, term, figure } = useWords();
  const [problem] = checkPlace(place, skin);
  if (problem !== undefined)
    return (
      <p className="where wrong" role="alert">
        {t('map.off')} <Said text={problem.message} />
      </p>
    );
  const m = (mm: number): string => figure(mm / 1000, 4);
  const { height } = locate(place, skin);
  const lines =
    place.surface === 'shell'
      ? [t('map.m.fromTransom', { m: m(place.fromTransomMm) }), t('map.m.fromKeel', { m: m(place.girthMm) })]
      : [t('map.m.offCentre', { m: m(place.offsetMm) }), t('map.m.up', { m: m(place.heightMm) })];
  return (
    <p className="where" aria-live="polite">
      <b>{t('map.at', { side: term(place.side), height: height === undefined ? '' : term(height) })}</b>
      {lines.map((line) => (
        <span key={line}>{line}</span>
      ))}
      <FromChine place={place} skin={skin} />
    </p>
  );
};

const FromChine = ({ place, skin }: WhereProps) => {
  const { t, figure } = useWords();
  if (place.surface !== 'shell') return null;
  const chine = girthAt(skin, place.fromTransomMm, 'chineGirthMm');
  if (chine === undefined) return null;
  const off = Math.round(place.girthMm - chine);
  const mm = figure(Math.abs(off), 4);
  return <span>{off > 0 ? t('map.aboveChine', { mm }) : t('map.belowChine', { mm })}</span>;
};
