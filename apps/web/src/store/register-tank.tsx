import { useQuery } from '@tanstack/react-query';
import type { MaterialView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { materialsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { decimal } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Empty } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

/** Puts a bulk tank on record, for one material: it is filled, gauged and drawn from after that. */
export const RegisterTank = () => {
  const { t } = useWords();
  const query = useQuery(materialsQuery);
  return (
    <Allowed to="registerTank" what={t('store.registerTank')}>
      <Answer what={t('store.theMaterials')} query={query}>
        {(materials) =>
          materials.length === 0 ? <Empty>{t('store.noMaterials')}</Empty> : <Fields materials={materials} />
        }
      </Answer>
    </Allowed>
  );
};

const Fields = ({ materials }: { readonly materials: readonly MaterialView[] }) => {
  const { t } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'code', label: t('store.tankCode') },
            {
              ...{ name: 'material', label: t('record.material'), kind: 'choice' },
              options: materials.map(({ code, name }) => [code, `${code}, ${name}`]),
            },
            { name: 'capacityKg', label: t('store.capacityKg'), kind: 'decimal' },
          ],
        },
      ]}
      button={t('store.registerTank')}
      send={(said, envelope) =>
        post(
          '/api/tanks',
          {},
          {
            ...{ ...envelope, code: said('code').trim(), material: said('material') },
            capacityKg: Number(decimal(said('capacityKg'))),
          },
        )
      }
      done={({ result }) => <p className="verdict">{mark('made', t('store.tankRegistered', { tank: result.code }))}</p>}
    />
  );
};
