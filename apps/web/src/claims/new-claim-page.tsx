import { useQueries } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { hullQuery, modelsQuery } from '../api/queries.js';
import { dealersQuery } from '../api/queries-of-claims.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { Answer } from '../asked/answer.js';
import { FilterForm } from '../asked/filter-form.js';
import { together } from '../asked/together.js';
import { Allowed } from '../entry/allowed.js';
import { HullLink } from '../record/links.js';
import { Empty, Page } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { FileClaim } from './file-claim.js';

const route = getRouteApi('/claims/new');

/** Files a claim: first which hull, then what was reported of it. */
export const NewClaimPage = () => (
  <AfterSaleWords>
    <NewClaim />
  </AfterSaleWords>
);

const NewClaim = () => {
  const { t } = useWords();
  const { hull = '' } = route.useSearch();
  const navigate = route.useNavigate();
  return (
    <Page title={t('claims.file')} name={t('claims.file')}>
      <Allowed to="fileClaim" what={t('claims.file')}>
        <FilterForm
          button={t('claims.takeHull')}
          fields={[{ name: 'hull', label: t('claims.hullHint'), kind: 'text' }]}
          values={{ hull }}
          onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
        />
        {hull === '' ? <Empty>{t('claims.hullFirst')}</Empty> : <OfHull key={hull} number={hull} />}
      </Allowed>
    </Page>
  );
};

const OfHull = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  const query = useQueries({ queries: [hullQuery(number), modelsQuery, dealersQuery], combine: together });
  const navigate = route.useNavigate();
  return (
    <Answer
      what={t('hulls.hull', { number })}
      query={query}
      notThere={
        <Empty>
          {t('claims.noHull', { number })} <Link to="/hulls">{t('app.nav.hulls')}</Link>
        </Empty>
      }
    >
      {([hull, models, dealers]) => (
        <>
          <p className="lead">
            <span className="n">
              <HullLink to={hull.number} />
            </span>
            {hull.hin === null ? '' : `, ${hull.hin}`}, {hull.modelName}
          </p>
          <FileClaim
            hull={hull}
            skin={models.find(({ code }) => code === hull.model)?.skins['hull molding']}
            dealers={dealers}
            onFiled={(claim) => void navigate({ to: '/claims/$claim', params: { claim } })}
          />
        </>
      )}
    </Answer>
  );
};
