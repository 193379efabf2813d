import type { CaseClass } from '@hull-record/contracts';
import { mark } from '../../marks/mark.js';
import { LotLink } from '../../record/links.js';
import { Facts } from '../../ui/page.js';
import { Table } from '../../ui/table.js';
import { useWords } from '../../words/use-words.js';
import { AtShares } from './at-shares.js';
import { chance, familyOf, ratioWords } from './figures.js';
import { HoldLot } from './hold-lot.js';

/** One class that stands out: lots that are in the same hulls, so that no figure can tell them apart. */
export const ClassShown = ({ of }: { readonly of: CaseClass }) => {
  const words = useWords();
  const { t, figure, percent } = words;
  const { table, p } = of.crude;
  return (
    <div className="opened">
      <h3>
        {of.named} <small>{familyOf(of)}</small>
      </h3>
      <p>{mark('near', t(`cases.strength.${of.strength}`))}</p>
      {of.lots.length > 1 ? <p className="b">{t('cases.sameHulls', { lots: of.lots.length })}</p> : null}
      {of.nearlySame.length === 0 ? null : <p>{t('cases.nearlySame', { lots: of.nearlySame.join(', ') })}</p>}
      {of.mixedWithAge ? <p>{t('cases.isMixed')}</p> : null}
      <Members of={of} />
      <Facts
        rows={[
          [t('cases.ratio'), ratioWords(of.ratio, words)],
          [t('cases.odds'), ratioWords(of.hazardOdds, words)],
          [t('cases.p'), chance(of.p, words)],
          [t('cases.q'), chance(of.q, words)],
          [t('cases.adjustedP'), of.adjustedP === null ? null : chance(of.adjustedP, words)],
          [
            t('cases.posterior'),
            of.posterior === null
              ? null
              : t('cases.fromTo', { from: percent(of.posterior.least), to: percent(of.posterior.most) }),
          ],
          [t('cases.hullYears'), figure(of.hullYears)],
        ]}
      />
      <AtShares of={of} />
      <Table
        caption={t('cases.crudeTable', { p: chance(p, words) })}
        columns={[
          { head: t('cases.whichHulls'), cell: ({ name }) => name, names: true },
          { head: t('cases.withClaim'), cell: ({ claimed }) => claimed, class: 'r n' },
          { head: t('cases.without'), cell: ({ without }) => without, class: 'r n' },
        ]}
        rows={[
          { name: t('cases.exposed'), claimed: table.exposedWithClaim, without: table.exposedWithout },
          { name: t('cases.others'), claimed: table.othersWithClaim, without: table.othersWithout },
        ]}
      />
      {of.lots.map((lot) => (
        <HoldLot key={lot} lot={lot} />
      ))}
    </div>
  );
};

const Members = ({ of: { members } }: { readonly of: CaseClass }) => {
  const { t } = useWords();
  return (
    <Table
      caption={t('cases.members')}
      columns={[
        { head: t('record.lot'), cell: ({ lot }) => <LotLink to={lot} />, names: true, class: 'n' },
        { head: t('record.supplierLot'), cell: ({ supplierLot }) => supplierLot ?? '–', class: 'n' },
        { head: t('record.material'), cell: ({ material }) => material ?? '–' },
        { head: t('cases.whereIn'), cell: ({ family }) => family },
      ]}
      rows={members}
    />
  );
};
