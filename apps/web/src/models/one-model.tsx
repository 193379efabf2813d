import { useQueries } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { MaterialView, ModelView } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { materialsQuery, modelsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { together } from '../asked/together.js';
import { Empty, Page } from '../ui/page.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { ModelsWords } from './models-words.js';

interface OneModelProps {
  readonly code: string;
  readonly children: ReactNode;
}

/** A page about one model, under its code. */
export const OneModelPage = ({ code, children }: OneModelProps) => {
  const { t } = useWords();
  return (
    <Page title={`${t('record.model')} ${code}`} kind={t('record.model')} name={code}>
      <ModelsWords>{children}</ModelsWords>
    </Page>
  );
};

interface WithModelProps {
  readonly code: string;
  /** What is asked for, in words that stand after "Not read:". */
  readonly what: string;
  readonly children: (model: ModelView, materials: readonly MaterialView[]) => ReactNode;
}

/** The model of a page, with the materials that its schedules name. */
export const WithModel = ({ code, what, children }: WithModelProps) => {
  const query = useQueries({ queries: [modelsQuery, materialsQuery], combine: together });
  return (
    <Answer what={what} query={query}>
      {([models, materials]) => {
        const model = models.find((each) => each.code === code);
        if (model !== undefined) return children(model, materials);
        return (
          <Empty>
            <Text of="models.notThere" with={{ model: code, list: (inside) => <Link to="/models">{inside}</Link> }} />
          </Empty>
        );
      }}
    </Answer>
  );
};
