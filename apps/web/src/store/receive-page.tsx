import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { materialsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { Button } from '../ui/button.js';
import { Empty, Page, Section } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { AddCertificate } from './add-certificate.js';
import { LabelContainers } from './label-containers.js';
import { ReceiveLot, type Received } from './receive-lot.js';

/** Receiving: the lot, then its containers with their labels, then the photo of its certificate. Each is kept at once. */
export const ReceivePage = () => {
  const { t } = useWords();
  const materials = useQuery(materialsQuery);
  const [received, setReceived] = useState<Received | null>(null);
  return (
    <Page title={t('store.receive')} name={t('store.receive')}>
      <p className="lead">{t('store.receiveLead')}</p>
      <Allowed to="receiveLot" what={t('store.receive')}>
        {received === null ? (
          <Answer what={t('store.theMaterials')} query={materials}>
            {(found) =>
              found.length === 0 ? (
                <Empty>
                  {t('store.noMaterials')} <Link to="/store/materials">{t('store.registerMaterial')}</Link>
                </Empty>
              ) : (
                <ReceiveLot materials={found} onReceived={setReceived} />
              )
            }
          </Answer>
        ) : (
          <Then received={received} onNext={() => setReceived(null)} />
        )}
      </Allowed>
    </Page>
  );
};

interface ThenProps {
  readonly received: Received;
  readonly onNext: () => void;
}

/** What follows once the lot is kept. */
const Then = ({ received, onNext }: ThenProps) => {
  const { t } = useWords();
  return (
    <>
      <div role="status">{received.words}</div>
      <Section name={t('store.containers')}>
        <LabelContainers lot={received.code} amount={received.amount} />
      </Section>
      <Section name={t('store.certificate')}>
        <AddCertificate isUnidentified={false} lot={received.code} />
      </Section>
      <p className="buttons">
        <Link to="/store/lots/$lot" params={{ lot: received.code }} className="btn">
          {t('store.toLot', { lot: received.code })}
        </Link>
        <Button onPress={onNext}>{t('store.receiveNext')}</Button>
      </p>
    </>
  );
};
