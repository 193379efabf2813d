import { Allowed } from '../../entry/allowed.js';
import { HoldLotForm } from '../../record/hold-lot-form.js';
import { Fold } from '../../ui/fold.js';
import { useWords } from '../../words/use-words.js';

/** Places a hold on a lot that stands out, from where that is seen. */
export const HoldLot = ({ lot }: { readonly lot: string }) => {
  const { t } = useWords();
  return (
    <Fold summary={t('cases.holdLot', { lot })}>
      <Allowed to="placeHold" what={t('cases.holdLot', { lot })}>
        <p className="caution">{t('cases.holdIs')}</p>
        <HoldLotForm lot={lot} />
      </Allowed>
    </Fold>
  );
};
