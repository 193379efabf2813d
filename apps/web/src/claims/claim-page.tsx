import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { ClaimView } from '@hull-record/contracts';
import { claimQuery } from '../api/queries-of-claims.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { Answer } from '../asked/answer.js';
import { mark } from '../marks/mark.js';
import { HullLink } from '../record/links.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { CalendarDay, Moment } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { ClaimPhotos } from './claim-photos.js';
import { ClaimedSpots } from './claimed-spots.js';
import { Decisions } from './decisions.js';
import { HowFound } from './how-found.js';
import { Survey } from './survey.js';
import { TermShown } from './term-shown.js';

const route = getRouteApi('/claims/$claim');

/** One claim: what was reported, where on the hull, its pictures, what the terms say, and what was decided. */
export const ClaimPage = () => (
  <AfterSaleWords>
    <OneClaim />
  </AfterSaleWords>
);

const OneClaim = () => {
  const { t } = useWords();
  const { claim } = route.useParams();
  const query = useQuery(claimQuery(claim));
  const name =
    query.data === undefined ? t('claims.claim') : t('claims.of', { mark: query.data.mark, hull: query.data.hull });
  return (
    <Page title={name} kind={t('claims.claim')} name={name}>
      <Answer
        what={t('claims.theClaim')}
        query={query}
        notThere={
          <Empty>
            {t('claims.notThere')} <Link to="/claims">{t('claims.title')}</Link>
          </Empty>
        }
      >
        {(view) => <Claim claim={view} />}
      </Answer>
    </Page>
  );
};

const Claim = ({ claim }: { readonly claim: ClaimView }) => {
  const { t } = useWords();
  return (
    <>
      <Stand claim={claim} />
      <Reported claim={claim} />
      <Section name={t('claims.where')}>
        <ClaimedSpots claim={claim} />
      </Section>
      <Section name={t('claims.photos')}>
        <ClaimPhotos claim={claim} />
      </Section>
      <Section name={t('claims.survey')}>
        <Survey claim={claim} />
      </Section>
      <Section name={t('claims.terms')}>
        <TermShown term={claim.term} model={claim.model} />
      </Section>
      <Section name={t('claims.decision')}>
        <Decisions claim={claim} />
      </Section>
      <Section name={t('claims.foundBy')}>
        <HowFound claim={claim} />
      </Section>
    </>
  );
};

/** How it stands, in one line. */
const Stand = ({ claim: { decision } }: { readonly claim: ClaimView }) => {
  const { t, term } = useWords();
  return (
    <p className="verdict">
      {decision === null
        ? mark('to come', t('claims.waitsForDecision'))
        : mark(decision === 'more is asked' ? 'near' : 'made', t('claims.decidedAs', { decision: term(decision) }))}
    </p>
  );
};

const Reported = ({ claim }: { readonly claim: ClaimView }) => {
  const { t, term, kind } = useWords();
  const { hull, hin, model, reportedOn, noticedOn, grade, looks, hint } = claim;
  return (
    <>
      <Facts
        rows={[
          [t('record.hull'), <span className="n">{<HullLink to={hull} />}</span>],
          [t('record.hin'), hin === null ? null : <span className="n">{hin}</span>],
          [t('record.model'), <span className="n">{model}</span>],
          [t('claims.kind'), kind(claim.kind)],
          [t('claims.reportedOn'), <CalendarDay at={reportedOn} />],
          [t('claims.noticedOn'), noticedOn === null ? null : <CalendarDay at={noticedOn} />],
          [t('claims.dealer'), claim.dealer === null ? null : <span className="n">{claim.dealer}</span>],
          [t('claims.reference'), claim.reference === null ? null : <span className="n">{claim.reference}</span>],
          [t('claims.grade'), grade === null ? null : <span className="n">{t('claims.graded', { grade })}</span>],
          [t('claims.looks'), looks === null ? null : term(looks)],
          [t('claims.enteredBy'), <span className="n">{claim.by}</span>],
          [t('record.when'), <Moment at={claim.happenedAt} />],
        ]}
      />
      <p className="lead">
        <Said text={claim.symptoms} />
      </p>
      {hint === null ? null : (
        <p>
          {t('claims.hint')} <Said text={hint} />
        </p>
      )}
    </>
  );
};
