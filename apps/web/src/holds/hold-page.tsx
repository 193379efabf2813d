import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { HoldView } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { holdQuery } from '../api/queries-of-holds.js';
import { Answer } from '../asked/answer.js';
import { RecomputingNote } from '../asked/recomputing-note.js';
import { mark, tape } from '../marks/mark.js';
import { LotLink } from '../record/links.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { Moment } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { Duty } from './duty.js';
import { EndHold } from './end-hold.js';
import { HeldHulls } from './held-hulls.js';
import { NarrowHold } from './narrow-hold.js';
import { Progress } from './progress.js';
import { useHeldThing } from './use-held-thing.js';

const route = getRouteApi('/holds/$hold');

/** One hold: what it is on, how far the work has come, its hulls, and what is decided about the duty to notify. */
export const HoldPage = () => {
  const { t } = useWords();
  const { hold } = route.useParams();
  const query = useQuery(holdQuery(hold));
  const thing = useHeldThing();
  const name = query.data === undefined ? t('holds.hold') : t('holds.titleOf', { thing: thing(query.data.on) });
  return (
    <Page title={name} name={name}>
      <Answer
        what={t('holds.theHold')}
        query={query}
        notThere={
          <Empty>
            {t('holds.notThere')} <Link to="/holds">{t('holds.title')}</Link>
          </Empty>
        }
      >
        {(view) => <Hold hold={view} />}
      </Answer>
    </Page>
  );
};

const Hold = ({ hold }: { readonly hold: HoldView }) => {
  const { t, term } = useWords();
  return (
    <>
      <p className="verdict">
        {hold.ended === null
          ? tape(t('holds.held', { kind: term(hold.kind) }))
          : mark('made', t('holds.over', { how: term(hold.ended.how) }))}{' '}
        <Said text={hold.reason} />
      </p>
      <Facts
        rows={[
          [t('holds.since'), <Moment at={hold.happenedAt} />],
          [t('holds.by'), <span className="n">{hold.by}</span>],
          [t('record.lot'), hold.on.lot === null ? null : <LotLink to={hold.on.lot} />],
          [t('holds.end'), hold.ended === null ? null : <Moment at={hold.ended.happenedAt} />],
          [t('holds.endedBecause'), hold.ended === null ? null : <Said text={hold.ended.reason} />],
        ]}
      />
      <RecomputingNote of={hold.recomputing} />
      <p>
        <a href={paperPath('/api/holds/:hold/hulls.pdf', { hold: hold.id })}>{t('holds.paper')}</a>{' '}
        <a href={`/api/holds/${hold.id}/hulls.csv`}>{t('holds.sheet')}</a>
      </p>
      <Section name={t('holds.progress')}>
        <Progress figures={hold.figures} />
      </Section>
      <Section name={t('holds.hulls')}>
        <HeldHulls hold={hold} />
      </Section>
      <Section name={t('holds.scope')}>
        <NarrowHold hold={hold} />
      </Section>
      <Section name={t('holds.end')}>
        <EndHold hold={hold} />
      </Section>
      <Section name={t('holds.dutyToNotify')}>
        <Duty hold={hold} />
      </Section>
    </>
  );
};
