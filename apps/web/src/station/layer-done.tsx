import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { NowLayer, NowPart } from '../day/now.js';
import { Acts } from '../station-frame/station-page.js';
import { useWords } from '../words/use-words.js';

interface LayerDoneProps {
  readonly part: NowPart;
  readonly layer: NowLayer;
  readonly note: ReactNode;
}

/** A layer is kept: what comes next is to read it. */
export const LayerDone = ({ part, layer: { scheduled }, note }: LayerDoneProps) => {
  const { t } = useWords();
  const [reading] = scheduled.readings;
  return (
    <>
      {note}
      <Acts>
        {reading === undefined ? null : (
          <Link
            className="btn do"
            to="/station/readings"
            search={{ part: part.number, layer: scheduled.code, what: reading.what }}
          >
            {t('lay.thenRead')}
          </Link>
        )}
        <Link className="btn" to="/station">
          {t('station.start')}
        </Link>
      </Acts>
    </>
  );
};
