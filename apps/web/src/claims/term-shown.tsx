import { Link } from '@tanstack/react-router';
import type { ClaimTerm } from '@hull-record/contracts';
import { mark, type Shape } from '../marks/mark.js';
import { Facts } from '../ui/page.js';
import { CalendarDay } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

interface TermShownProps {
  readonly term: ClaimTerm;
  readonly model: string;
}

/** What the terms say of a claim, and why: data for the person who decides, and no decision. */
export const TermShown = ({ term, model }: TermShownProps) => {
  const { t, figure, term: word } = useWords();
  const { startsOn, startsWith, endsOn, year, bearsPercent, terms, modelYear, exclusions, says } = term;
  return (
    <>
      <p className="verdict">{mark(SHAPE[String(term.within)] ?? 'near', t(`claims.within.${stand(term)}`))}</p>
      <ul className="plain">
        {says.map((each) => (
          <li key={each}>
            <Said text={each} />
          </li>
        ))}
      </ul>
      <Facts
        rows={[
          [t('claims.startsOn'), startsOn === null ? null : <CalendarDay at={startsOn} />],
          [t('claims.startsWith'), startsWith === null ? null : word(startsWith)],
          [t('claims.endsOn'), endsOn === null ? null : <CalendarDay at={endsOn} />],
          [t('claims.year'), year],
          [t('claims.bears'), bearsPercent === null ? null : `${figure(bearsPercent, 4)} %`],
          [t('claims.modelYear'), modelYear],
          [
            t('claims.termsVersion'),
            terms === null ? null : (
              <Link to="/warranty" search={{ model }}>
                {t('warranty.version', { model, version: terms.version })}
              </Link>
            ),
          ],
        ]}
      />
      {exclusions.length === 0 ? null : (
        <>
          <p>{t('claims.exclusions')}</p>
          <ul className="indented">
            {exclusions.map((each) => (
              <li key={each}>
                <Said text={each} />
              </li>
            ))}
          </ul>
        </>
      )}
      <p className="note soft">{t('claims.personDecides')}</p>
    </>
  );
};

const SHAPE: Readonly<Record<string, Shape>> = { true: 'inside', false: 'outside', null: 'near' };

const stand = ({ within }: ClaimTerm): 'yes' | 'no' | 'unknown' => {
  if (within === null) return 'unknown';
  return within ? 'yes' : 'no';
};
