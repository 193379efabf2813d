import { useQueries } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { modelsQuery } from '../api/queries.js';
import { defectKindsQuery, moldsQuery } from '../api/queries-of-map.js';
import { Answer } from '../asked/answer.js';
import { together } from '../asked/together.js';
import { Empty, Page } from '../ui/page.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { areaFromText } from './area.js';
import { areaInAddress } from './area-form.js';
import { FILTERS, type FilterName } from './map-filter.js';
import { ModelMap } from './model-map.js';

const route = getRouteApi('/map');

/** The hull map of many hulls: where on the skin of a model defects were found. */
export const MapPage = () => {
  const { t } = useWords();
  const query = useQueries({ queries: [modelsQuery, moldsQuery, defectKindsQuery], combine: together });
  const { area, ...address } = route.useSearch();
  const navigate = route.useNavigate();
  const values = Object.fromEntries(FILTERS.map((name) => [name, address[name] ?? ''])) as Record<FilterName, string>;
  return (
    <Page title={t('manyMap.title')} name={t('manyMap.title')}>
      <Answer what={t('manyMap.models')} query={query}>
        {([models, molds, kinds]) => {
          const model = models.find(({ code }) => code === values.model) ?? models[0];
          if (model === undefined)
            return (
              <Empty>
                <Text of="manyMap.noModel" with={{ hulls: (inside) => <Link to="/hulls">{inside}</Link> }} />
              </Empty>
            );
          return (
            <ModelMap
              known={{ models, model, molds, kinds }}
              values={values}
              area={areaFromText(area)}
              onChosen={(chosen) =>
                void navigate({ search: { ...chosen, ...(area ? { area } : {}) }, replace: true, resetScroll: false })
              }
              onArea={(chosen) =>
                void navigate({
                  search: { ...address, area: areaInAddress(chosen) },
                  replace: true,
                  resetScroll: false,
                })
              }
            />
          );
        }}
      </Answer>
    </Page>
  );
};
