import type { PartView } from '@hull-record/contracts';
import { paperPath } from '../../api/ask.js';
import { mark } from '../../marks/mark.js';
import { Said } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { GrindOut } from './grind-out.js';
import { PlyList } from './ply-list.js';
import type { WorkedOut } from './repair-draft.js';

interface OrderSheetProps {
  readonly part: PartView;
  readonly worked: WorkedOut;
}

/** The order: the grind-out drawn to scale, the plies that fill it, and what is wrong with the plan. */
export const OrderSheet = ({ part, worked: { plan, order, cut } }: OrderSheetProps) => {
  const { t } = useWords();
  if (order === null) return <p role="status">{t('bay.planIncomplete')}</p>;
  return (
    <section className="order">
      <h2>{t('bay.order')}</h2>
      <GrindOut plan={plan} order={order} />
      <PlyList order={order} plies={cut.plies} />
      {order.findings.length === 0 ? (
        <p>{mark('inside', t('bay.planSound'))}</p>
      ) : (
        order.findings.map(({ rule, detail }) => (
          <p key={rule}>{mark('outside', <Said text={`${rule}: ${detail}`} />)}</p>
        ))
      )}
      <p className="soft small">{t('bay.orderDefers')}</p>
      <p>
        <a href={paperPath('/api/parts/:part/repair-order.pdf', { part: part.number })}>{t('bay.orderPaper')}</a>
      </p>
    </section>
  );
};
