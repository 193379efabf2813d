import type { LotView } from '@hull-record/contracts';
import type { RouteName } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { Allowed } from '../entry/allowed.js';
import { Fold } from '../ui/fold.js';
import { useWords } from '../words/use-words.js';
import { BookLoss } from './book-loss.js';
import { CountLot } from './count-lot.js';
import { IdentifyLot } from './identify-lot.js';
import { RetestLot } from './retest-lot.js';

/** What else is done with a lot in the store: counted, lost, retested, and named when nobody could name it. */
export const LotActs = ({ lot }: { readonly lot: LotView }) => {
  const { t } = useWords();
  return (
    <>
      {lot.origin === 'unidentified' ? (
        <Act to="identifyLot" what={t('store.identify')} open>
          <IdentifyLot lot={lot.code} />
        </Act>
      ) : null}
      <Act to="countLot" what={t('store.count')}>
        <CountLot lot={lot.code} leftKg={lot.leftKg} />
      </Act>
      <Act to="bookLoss" what={t('store.lose')}>
        <BookLoss lot={lot.code} />
      </Act>
      <Act to="retestLot" what={t('store.retest')}>
        <RetestLot lot={lot.code} />
      </Act>
    </>
  );
};

interface ActProps {
  readonly to: RouteName;
  readonly what: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}

const Act = ({ to, what, open = false, children }: ActProps) => (
  <Fold summary={what} open={open}>
    <Allowed to={to} what={what}>
      {children}
    </Allowed>
  </Fold>
);
