import { Link } from '@tanstack/react-router';
import type { CaseAnswer } from '@hull-record/contracts';
import { HullLink, LotLink } from '../../record/links.js';
import { Joined } from '../../ui/joined.js';
import { Said } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { leaderOf } from './figures.js';

/** What would settle it, with the ways to the lots, the hulls that hold them, and the hulls to look at. */
export const NextSteps = ({ answer: { next, classes, toInspect = [] } }: { readonly answer: CaseAnswer }) => {
  const { t, percent } = useWords();
  const leader = leaderOf(classes);
  return (
    <>
      <ul className="plain sentences">
        {next.map((each) => (
          <li key={each}>
            <Said text={each} />
          </li>
        ))}
      </ul>
      {leader === undefined ? null : (
        <ul className="plain">
          {leader.lots.map((lot) => (
            <li key={lot}>
              {t('cases.toLot')} <span className="n">{<LotLink to={lot} />}</span>{' '}
              <Link to="/trace/lots/$lot" params={{ lot }}>
                {t('cases.toTrace', { lot })}
              </Link>
            </li>
          ))}
        </ul>
      )}
      {toInspect.length === 0 ? null : (
        <p>
          {t('cases.toHulls')}{' '}
          <span className="n">
            <Joined by=", ">
              {toInspect.map(({ hull, share }) => (
                <span key={hull}>
                  <HullLink to={hull} /> {percent(share)}
                </span>
              ))}
            </Joined>
          </span>
        </p>
      )}
    </>
  );
};
