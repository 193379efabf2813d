import { keepPreviousData, useQuery } from '@tanstack/react-query';
import type { CaseGroups } from '@hull-record/contracts';
import { Refused } from '../api/problem.js';
import { groupsQuery } from '../api/queries-of-cases.js';
import { Answer } from '../asked/answer.js';
import type { Said } from '../entry/entry-field.js';
import { Table } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { listed } from './listed.js';

type Choice = CaseGroups['choices'][number];

/** Before anything is frozen: what each way to compare would leave to compare with. */
export const GroupSizes = ({ code, said }: { readonly code: string; readonly said: Said }) => {
  const { t } = useWords();
  const asked = {
    ...{ models: listed(said('models')).join(','), origin: said('origin') },
    ...{ builtFrom: said('builtFrom'), builtTo: said('builtTo') },
  };
  const query = useQuery({ ...groupsQuery(code, asked), placeholderData: keepPreviousData });
  if (query.error instanceof Refused && [400, 422].includes(query.error.status))
    return (
      <p className="soft" role="status">
        {t('cases.groupsWrong')}
      </p>
    );
  return (
    <Answer what={t('cases.theGroups')} query={query}>
      {(groups) => <Sizes groups={groups} chosen={(each) => said(`strata ${each}`) === 'yes'} />}
    </Answer>
  );
};

interface SizesProps {
  readonly groups: CaseGroups;
  readonly chosen: (stratum: string) => boolean;
}

const Sizes = ({ groups: { hulls, smallBelow, choices }, chosen }: SizesProps) => {
  const { t, term } = useWords();
  const named = ({ strata }: Choice): string => strata.map(term).join(', ') || t('cases.allTogether');
  const isChosen = ({ strata }: Choice): boolean =>
    ['build quarter', 'model'].every((each) => chosen(each) === strata.some((stratum) => stratum === each));
  const now = choices.find(isChosen);
  return (
    <>
      <Table
        caption={t('cases.groupTable', { hulls })}
        columns={[
          {
            ...{ head: t('cases.strata'), names: true },
            cell: (choice) => (choice === now ? t('cases.groupChosen', { what: named(choice) }) : named(choice)),
          },
          { head: t('cases.groups'), cell: ({ groups }) => groups, class: 'r n' },
          { head: t('cases.inSmall', { below: smallBelow }), cell: ({ hullsInSmall }) => hullsInSmall, class: 'r n' },
        ]}
        rows={choices}
      />
      {now && now.strata.length > 0 && now.hullsInSmall * 2 > hulls ? (
        <p className="caution" role="status">
          {t('cases.groupsSmall', { hulls, small: now.hullsInSmall, below: smallBelow })}
        </p>
      ) : null}
    </>
  );
};
