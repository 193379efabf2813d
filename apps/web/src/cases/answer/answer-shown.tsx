import type { CaseAnswer, CaseClass } from '@hull-record/contracts';
import { Fold } from '../../ui/fold.js';
import { mark } from '../../marks/mark.js';
import { Facts, Section } from '../../ui/page.js';
import { CalendarDay } from '../../words/moments.js';
import { Said } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { Apart } from './apart.js';
import { ClassShown } from './class-shown.js';
import { Cover } from './cover.js';
import { Curves } from './curves.js';
import { familyOf, leaderOf } from './figures.js';
import { Forecast } from './forecast.js';
import { Forest } from './forest.js';
import { NextSteps } from './next-steps.js';
import { Places } from './places.js';
import { Triangle } from './triangle.js';
import { Untestable } from './untestable.js';

/** What a look found: the word first, then each picture with its sentence and table, then what would settle it. */
export const AnswerShown = ({ answer }: { readonly answer: CaseAnswer }) => {
  const { t } = useWords();
  const { forecast, places, classes } = answer;
  const leader = leaderOf(classes);
  const others = classes.filter((each) => each !== leader && each.strength !== 'none');
  return (
    <>
      <Word answer={answer} />
      <Counts answer={answer} />
      {forecast === null ? null : (
        <Section name={t('cases.triangle')}>
          <Triangle rows={forecast.triangle} notLaunched={forecast.notLaunched} />
        </Section>
      )}
      <Section name={t('cases.lotsCompared')}>
        <Forest
          rows={classes.map(withFamily)}
          tests={answer.tests}
          caption={t('cases.classList')}
          words={t('cases.lotsAre')}
        />
        {leader === undefined ? null : <ClassShown of={leader} />}
        {others.slice(0, 4).map((each, i) => (
          <Fold key={i} summary={t('cases.alsoStands', { named: each.named, family: familyOf(each) })}>
            <ClassShown of={each} />
          </Fold>
        ))}
        <Untestable of={answer.untestable} />
      </Section>
      <Section name={t('cases.cover')}>
        <Cover of={answer.cover} />
      </Section>
      <Section name={t('cases.apart')}>
        <Apart rows={answer.apart} />
      </Section>
      {forecast === null ? null : (
        <>
          <Section name={t('cases.curves')}>
            <Curves groups={forecast.groups} />
          </Section>
          <Section name={t('cases.forecast')}>
            <Forecast of={forecast} />
          </Section>
        </>
      )}
      {places === null ? null : (
        <Section name={t('cases.places')}>
          <Places of={places} />
        </Section>
      )}
      <Section name={t('cases.next')}>
        <NextSteps answer={answer} />
      </Section>
      <Section name={t('cases.cannotSay')}>
        <Sentences of={answer.cannotSay} />
      </Section>
    </>
  );
};

const withFamily = (of: CaseClass) => ({ ...of, family: familyOf(of) });

/** The word of the contract, and plainly whether it is only exploratory. */
const Word = ({ answer: { verdict, exploratory, sentences } }: { readonly answer: CaseAnswer }) => {
  const { t, term } = useWords();
  return (
    <>
      <p className="verdict">
        {mark(
          verdict === 'no lot stands out' ? 'none' : 'near',
          exploratory ? t('cases.exploratoryWord', { word: term(verdict) }) : term(verdict),
        )}
      </p>
      <p className={exploratory ? 'caution' : 'note soft'}>
        {exploratory ? t('cases.isExploratory') : t('cases.isConfirming')}
      </p>
      <Sentences of={sentences} />
    </>
  );
};

const Sentences = ({ of }: { readonly of: readonly string[] }) => (
  <ul className="plain sentences">
    {of.map((each) => (
      <li key={each}>
        <Said text={each} />
      </li>
    ))}
  </ul>
);

/** Which hulls and claims it rests on, and which were left out. */
const Counts = ({ answer: { hulls, watchedUntil, tests, stable, method } }: { readonly answer: CaseAnswer }) => {
  const { t, percent } = useWords();
  return (
    <Facts
      rows={[
        [t('cases.atRisk'), hulls.atRisk],
        [t('cases.withClaim'), hulls.withClaim],
        [t('cases.prompted'), hulls.prompted],
        [t('cases.late'), hulls.late],
        [t('cases.before'), hulls.before],
        [t('cases.beforeOrigin'), hulls.beforeOrigin],
        [
          t('cases.withoutOrigin'),
          t('cases.countAndShare', { count: hulls.withoutOrigin, share: percent(hulls.shareWithoutOrigin) }),
        ],
        [t('cases.withoutOriginWithClaim'), hulls.withoutOriginWithClaim],
        [t('cases.notLaunched'), hulls.notLaunched],
        [t('cases.strataCount'), hulls.strata],
        [t('cases.tests'), tests],
        [t('cases.stable'), stable === undefined ? undefined : t(stable ? 'cases.isStable' : 'cases.isUnstable')],
        [t('cases.watchedUntil'), <CalendarDay at={watchedUntil} />],
        [t('cases.method'), method],
      ]}
    />
  );
};
