import { useNavigate } from '@tanstack/react-router';
import { FilterForm } from '../asked/filter-form.js';
import { Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

/** Where a trace begins: at a lot, or at hulls. */
export const TracesPage = () => {
  const { t } = useWords();
  const navigate = useNavigate();
  const toLot = (lot: string): void => void (lot === '' ? null : navigate({ to: '/trace/lots/$lot', params: { lot } }));
  const toHulls = (typed: string): void => {
    const [number = '', ...also] = typed.split(/[\s,;]+/).filter((each) => each !== '');
    if (number !== '')
      void navigate({ to: '/trace/hulls/$number', params: { number }, search: { also: also.join(',') } });
  };
  return (
    <Page title={t('traces.title')} name={t('traces.title')}>
      <p className="lead">{t('traces.lead')}</p>
      <Section name={t('traces.whereTo')}>
        <FilterForm
          button={t('traces.begin')}
          fields={[{ name: 'lot', label: t('traces.codeOfLot'), kind: 'text' }]}
          values={{ lot: '' }}
          onChosen={({ lot }) => toLot(lot)}
        />
      </Section>
      <Section name={t('traces.whereFrom')}>
        <FilterForm
          button={t('traces.begin')}
          fields={[{ name: 'hulls', label: t('traces.numbers'), hint: t('traces.alsoHint'), kind: 'text' }]}
          values={{ hulls: '' }}
          onChosen={({ hulls }) => toHulls(hulls)}
        />
      </Section>
    </Page>
  );
};
