import type { TankView } from '@hull-record/contracts';
import { Allowed } from '../entry/allowed.js';
import { useWords } from '../words/use-words.js';
import { CountLot } from './count-lot.js';

interface GaugeTankProps {
  readonly tank: TankView;
  readonly lot: string;
}

/** Gauges a tank between fills: what was measured in it, by dip, gauge or scale. */
export const GaugeTank = ({ tank, lot }: GaugeTankProps) => {
  const { t } = useWords();
  return (
    <Allowed to="countLot" what={t('store.gauge')}>
      <CountLot lot={lot} leftKg={tank.bookKg ?? 0} />
    </Allowed>
  );
};
