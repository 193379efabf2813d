import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { WarrantyTermsView } from '@hull-record/contracts';
import { modelsQuery } from '../api/queries.js';
import { warrantyTermsQuery } from '../api/queries-of-claims.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { Answer } from '../asked/answer.js';
import { FilterForm } from '../asked/filter-form.js';
import { Allowed } from '../entry/allowed.js';
import { Fold } from '../ui/fold.js';
import { Empty, Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { SetTerms } from './set-terms.js';
import { TermsVersion } from './terms-version.js';

const route = getRouteApi('/warranty');

/** Warranty terms of a model: versions that never change, the newest first, and publishing the next. */
export const WarrantyPage = () => (
  <AfterSaleWords>
    <Terms />
  </AfterSaleWords>
);

const Terms = () => {
  const { t } = useWords();
  const models = useQuery(modelsQuery);
  const { model: asked = '' } = route.useSearch();
  const navigate = route.useNavigate();
  return (
    <Page title={t('warranty.title')} name={t('warranty.title')}>
      <p className="lead">{t('warranty.lead')}</p>
      <Answer what={t('manyMap.models')} query={models}>
        {(known) => {
          const model = known.find(({ code }) => code === asked) ?? known[0];
          if (model === undefined)
            return (
              <Empty>
                {t('warranty.noModel')} <Link to="/hulls">{t('app.nav.hulls')}</Link>
              </Empty>
            );
          return (
            <>
              <FilterForm
                button={t('app.show')}
                fields={[
                  {
                    ...{ name: 'model', label: t('record.model'), kind: 'choice', none: `${known[0]?.name ?? ''}` },
                    options: known.map(({ code, name }) => [code, `${name} (${code})`]),
                  },
                ]}
                values={{ model: model.code }}
                onChosen={(chosen) => void navigate({ search: chosen, replace: true })}
              />
              <OfModel key={model.code} model={model.code} />
            </>
          );
        }}
      </Answer>
    </Page>
  );
};

const OfModel = ({ model }: { readonly model: string }) => {
  const { t } = useWords();
  const query = useQuery(warrantyTermsQuery(model));
  return (
    <>
      <Answer what={t('warranty.theTerms')} query={query}>
        {(versions) => <Versions model={model} versions={versions} />}
      </Answer>
      <Section name={t('warranty.set')}>
        <Allowed to="setWarrantyTerms" what={t('warranty.set')}>
          <SetTerms model={model} />
        </Allowed>
      </Section>
    </>
  );
};

interface VersionsProps {
  readonly model: string;
  readonly versions: readonly WarrantyTermsView[];
}

/** The newest stands open; those before it stay as they were, folded. */
const Versions = ({ model, versions }: VersionsProps) => {
  const { t } = useWords();
  const [newest, ...before] = versions;
  if (newest === undefined) return <Empty>{t('warranty.none', { model })}</Empty>;
  return (
    <>
      <Section name={t('warranty.version', { model, version: newest.version })}>
        <TermsVersion terms={newest} />
      </Section>
      {before.map((terms) => (
        <Fold key={terms.id} summary={t('warranty.version', { model, version: terms.version })}>
          <TermsVersion terms={terms} />
        </Fold>
      ))}
    </>
  );
};
