import { DEFECT_KINDS } from '@hull-record/trade';
import { useState, type ReactElement } from 'react';
import { Choice } from '../../ui/choice.js';
import { Picks } from '../../ui/picks.js';
import { useWords } from '../../words/use-words.js';

/** The kinds that are met most (common practice), each with a drawing; all others are in the list. */
const DRAWN: Readonly<Record<string, ReactElement>> = {
  'air-bubble': <ellipse cx="22" cy="15" rx="13" ry="7" />,
  'dry-spot': <path d="M8 22C6 10 18 4 26 8S40 16 34 24 12 28 8 22z" strokeDasharray="4 3" />,
  'internal-delamination': <path d="M4 12C14 6 30 6 40 12M4 12C14 18 30 18 40 12M4 24H40" />,
  wrinkles: <path d="M3 18H14C18 18 17 8 22 8S26 18 30 18H41" />,
  'surface-crack': <path d="M6 26L16 16L20 20L28 8L40 4" />,
  blister: <path d="M3 22H12C12 8 32 8 32 22H41M16 26H28" />,
};

const OTHER = 'other';
const OTHER_DRAWING = <path d="M12 15h.1M22 15h.1M32 15h.1" strokeWidth="5" strokeLinecap="round" />;

interface KindPicksProps {
  readonly kind: string;
  readonly onKind: (kind: string) => void;
}

/** The kind of a defect, by the trade's own words. */
export const KindPicks = ({ kind, onKind }: KindPicksProps) => {
  const { t, kind: kindWords } = useWords();
  const [listed, setListed] = useState(false);
  const others = DEFECT_KINDS.filter(({ code }) => !Object.hasOwn(DRAWN, code));
  return (
    <>
      <Picks
        label={t('bay.kind')}
        aside={t('bay.kindSource')}
        className="kinds"
        value={listed ? OTHER : kind || undefined}
        picks={[...Object.entries(DRAWN), [OTHER, OTHER_DRAWING] as const].map(([code, drawing]) => ({
          value: code,
          words: code === OTHER ? t('bay.otherKind') : kindWords(code),
          drawing: <Sketch>{drawing}</Sketch>,
        }))}
        onPick={(code) => {
          setListed(code === OTHER);
          onKind(code === OTHER ? '' : code);
        }}
      />
      {listed ? (
        <Choice
          label={t('bay.otherKind')}
          value={kind}
          none={t('bay.chooseKind')}
          options={others.map(({ code }) => [code, kindWords(code)])}
          onChange={onKind}
        />
      ) : null}
    </>
  );
};

const Sketch = ({ children }: { readonly children: ReactElement }) => (
  <svg className="sketch" width="44" height="30" viewBox="0 0 44 30" aria-hidden="true">
    {children}
  </svg>
);
