import { useQuery } from '@tanstack/react-query';
import { lazy, Suspense } from 'react';
import type { LookView } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { lookQuery } from '../api/queries-of-cases.js';
import { Answer, Loading } from '../asked/answer.js';
import { Section } from '../ui/page.js';
import { Said, Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { LookAgain } from './look-again.js';

/** The pictures of an answer come when there is one to be drawn. */
const LateAnswer = lazy(async () => ({ default: (await import('./answer/answer-shown.js')).AnswerShown }));

interface LookShownProps {
  readonly code: string;
  readonly look: number;
  readonly looks: number;
}

/** One look: how far it is while it is worked out, then what was found. */
export const LookShown = ({ code, look, looks }: LookShownProps) => {
  const { t } = useWords();
  const query = useQuery(lookQuery(code, String(look)));
  return (
    <Section name={t('cases.lookOf', { look, looks })}>
      <Answer what={t('cases.theLook', { look })} query={query}>
        {(view) => <Shown view={view} />}
      </Answer>
    </Section>
  );
};

const Shown = ({ view }: { readonly view: LookView }) => {
  const { t } = useWords();
  if (view.answer === null) return <OnItsWay progress={view.progress} />;
  return (
    <>
      <Suspense fallback={<Loading what={t('cases.theLook', { look: view.look })} />}>
        <LateAnswer answer={view.answer} />
      </Suspense>
      <p>
        <a href={paperPath('/api/cases/:case/looks/:look/report.pdf', { case: view.case, look: String(view.look) })}>
          {t('cases.report')}
        </a>{' '}
        <span className="soft">{t('cases.reportIs')}</span>
      </p>
      <LookAgain view={view} />
    </>
  );
};

/** How far it is, as a bar of steps with the words that say the same. */
const OnItsWay = ({ progress: { state, step, done, total, trouble } }: Pick<LookView, 'progress'>) => {
  const { t } = useWords();
  return (
    <div role="status">
      <p className="verdict">{t(`cases.state.${state}`)}</p>
      {total === 0 ? null : (
        <svg
          className="planks"
          viewBox="0 0 100 4"
          preserveAspectRatio="none"
          role="img"
          aria-label={t('cases.steps', { done, total })}
        >
          <rect x="0" y="0" width="100" height="4" className="planks-all" />
          <rect x="0" y="0" width={(100 * done) / total} height="4" className="planks-done" />
        </svg>
      )}
      <p>
        {t('cases.steps', { done, total })} {step === null ? null : <Term word={step} />}
      </p>
      {trouble === null ? null : (
        <p className="wrong">
          <Said text={trouble} />
        </p>
      )}
    </div>
  );
};
