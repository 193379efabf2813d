import type { ReactNode } from 'react';
import { Fold } from '../../ui/fold.js';
import { useWords } from '../../words/use-words.js';

interface DrawingProps {
  /** What it shows, in a sentence. */
  readonly words: string;
  readonly width: number;
  readonly height: number;
  readonly children: ReactNode;
  /** The same figures. */
  readonly table: ReactNode;
  /** What it cannot say. */
  readonly not?: ReactNode;
}

/** A picture with its sentence, and the table behind it. On a narrow screen it is moved, and not made too small to read. */
export const Drawing = ({ words, width, height, children, table, not }: DrawingProps) => {
  const { t } = useWords();
  return (
    <figure className="drawn">
      <div className="drawn-board" role="group" aria-label={t('cases.picture')} tabIndex={0}>
        <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={words}>
          {children}
        </svg>
      </div>
      <figcaption>
        {words} {not === undefined ? null : <span className="soft">{not}</span>}
      </figcaption>
      <Fold summary={t('cases.asTable')}>{table}</Fold>
    </figure>
  );
};
