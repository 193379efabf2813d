import { Link } from '@tanstack/react-router';
import type { HullView } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

const CUTS = ['internal', 'dealer', 'expert'] as const;

/** The papers of a hull: its build record in each cut, and the sheets of its parts. */
export const Documents = ({ hull: { number, parts } }: { readonly hull: HullView }) => {
  const { t } = useWords();
  const record = paperPath('/api/hulls/:number/build-record.pdf', { number });
  return (
    <Section name={t('hulls.documents')}>
      <ul className="plain">
        {CUTS.map((cut) => (
          <li key={cut}>
            {`${t('hulls.buildRecord')}: `}
            <a href={`${record}?cut=${cut}`}>{t(`hulls.cut.${cut}`)}</a> <span className="soft">{t('hulls.pdf')}</span>
          </li>
        ))}
        {parts.map(({ number: part }) => (
          <li key={part}>
            <a href={paperPath('/api/parts/:part/hold-points.pdf', { part })}>{t('hulls.holdPointsOf', { part })}</a>{' '}
            <span className="soft">{t('hulls.pdf')}</span>
          </li>
        ))}
        <li>
          <Link to="/labels" search={{ of: 'hull', codes: number }}>
            {t('hulls.labelOfHull')}
          </Link>
        </li>
        {parts.length === 0 ? null : (
          <li>
            <Link to="/labels" search={{ of: 'part', codes: parts.map((part) => part.number).join(',') }}>
              {t('hulls.labelsOfParts', { count: parts.length })}
            </Link>
          </li>
        )}
      </ul>
    </Section>
  );
};
