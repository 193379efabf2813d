import type { DefectSuspects } from '@hull-record/contracts';
import { HullLink, LotLink } from '../record/links.js';
import { Paths } from '../record/paths.js';
import { Joined } from '../ui/joined.js';
import type { Column } from '../ui/table.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Suspect = DefectSuspects['lots'][number];

/** The lots at the place of a defect: how much, by which way, and who else holds them. */
export const useSuspectColumns = (): readonly Column<Suspect>[] => {
  const { t, term, mass, percent } = useWords();
  return [
    { head: t('record.lot'), cell: ({ lot }) => <LotLink to={lot} />, names: true, class: 'n' },
    {
      head: t('record.material'),
      cell: ({ material, role, supplierLot }) => {
        const words = t('record.materialOf', { material: material ?? t('record.unknown'), role: term(role) });
        return supplierLot === null ? words : `${words}, ${supplierLot}`;
      },
    },
    { head: t('defects.there'), cell: ({ kg }) => mass(kg), class: 'r' },
    { head: t('defects.share'), cell: ({ share }) => percent(share), class: 'r' },
    { head: t('defects.way'), cell: ({ places }) => <Ways places={places} /> },
    { head: t('defects.others'), cell: (suspect) => <Others of={suspect} /> },
  ];
};

const Ways = ({ places }: Pick<Suspect, 'places'>) => {
  const { term } = useWords();
  return (
    <ul className="plain">
      {places.map(({ place, kind, paths }) => (
        <li key={`${kind} ${place}`}>
          {`${term(kind)} ${place}: `}
          <Paths paths={paths} />
        </li>
      ))}
    </ul>
  );
};

const Others = ({ of: { otherHulls, otherHullCount: count } }: { readonly of: Suspect }) => {
  const { t } = useWords();
  if (count === 0) return t('record.none');
  const rest = count - otherHulls.length;
  const hulls = (
    <span className="n">
      <Joined by=", ">
        {otherHulls.map((each) => (
          <HullLink key={each} to={each} />
        ))}
      </Joined>
    </span>
  );
  return (
    <>
      <Text of="defects.othersCount" with={{ count, hulls }} />
      {rest > 0 ? ` ${t('defects.andMore', { count: rest })}` : null}
    </>
  );
};
