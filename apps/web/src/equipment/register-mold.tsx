import { useQuery } from '@tanstack/react-query';
import type { ModelView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { modelsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Empty, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

const PART_KINDS = ['hull molding', 'deck', 'liner', 'stringer grid', 'hatch'] as const;

/** Puts a mold of a model on record: parts are begun in it from then on. */
export const RegisterMold = () => {
  const { t } = useWords();
  const query = useQuery(modelsQuery);
  return (
    <Section name={t('molds.register')}>
      <Allowed to="registerMold" what={t('molds.register')}>
        <Answer what={t('molds.models')} query={query}>
          {(models) => (models.length === 0 ? <Empty>{t('molds.noModels')}</Empty> : <Fields models={models} />)}
        </Answer>
      </Allowed>
    </Section>
  );
};

const Fields = ({ models }: { readonly models: readonly ModelView[] }) => {
  const { t, term } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'code', label: t('molds.code') },
            {
              ...{ name: 'model', label: t('record.model'), kind: 'choice' },
              options: models.map(({ code, name }) => [code, `${code}, ${name}`]),
            },
            {
              ...{ name: 'partKind', label: t('molds.partKind'), kind: 'choice' },
              options: PART_KINDS.map((kind) => [kind, term(kind)]),
            },
          ],
        },
      ]}
      button={t('molds.register')}
      send={(said, envelope) =>
        post(
          '/api/molds',
          {},
          {
            ...{ ...envelope, code: said('code').trim(), model: said('model') },
            partKind: said('partKind') as (typeof PART_KINDS)[number],
          },
        )
      }
      done={({ result }) => <p className="verdict">{mark('made', t('molds.registered', { code: result.code }))}</p>}
    />
  );
};
