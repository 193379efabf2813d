import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import { labelStockQuery } from '../api/queries-of-labels.js';
import { Answer } from '../asked/answer.js';
import { Page } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { ChooseLabels } from './choose-labels.js';
import { PrintLabels } from './print-labels.js';

const route = getRouteApi('/labels');

/** Labels: of what, on which stock, how the sheet will look, and the PDF. */
export const PrintLabelsPage = () => {
  const { t } = useWords();
  const { of = '', codes = '' } = route.useSearch();
  const navigate = route.useNavigate();
  const stock = useQuery(labelStockQuery);
  const wanted = codes
    .split(/[\n,]/)
    .map((code) => code.trim())
    .filter((code) => code !== '');
  return (
    <Page title={t('labels.title')} name={t('labels.title')}>
      <ChooseLabels of={of} codes={codes} onChosen={(search) => void navigate({ search, replace: true })} />
      {of === '' || wanted.length === 0 ? (
        <p className="empty">{t('labels.empty')}</p>
      ) : (
        <Answer what={t('labels.theStock')} query={stock}>
          {(stocks) => <PrintLabels key={`${of} ${codes}`} of={of} codes={wanted} stocks={stocks} />}
        </Answer>
      )}
    </Page>
  );
};
