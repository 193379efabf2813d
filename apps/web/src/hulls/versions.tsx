import { useQuery } from '@tanstack/react-query';
import type { VersionsView } from '@hull-record/contracts';
import { versionsQuery } from '../api/queries-of-hull.js';
import { Answer } from '../asked/answer.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Version = VersionsView['versions'][number];

/** A record that was corrected, as such: every version of it, why it was corrected, when and by whom. */
export const Versions = ({ fact }: { readonly fact: string }) => {
  const { t } = useWords();
  const query = useQuery(versionsQuery(fact));
  return (
    <Answer what={t('hulls.versions')} query={query}>
      {({ versions }) => (
        <Table
          caption={t('hulls.versionsCaption')}
          columns={[
            { head: t('hulls.recorded'), cell: ({ recordedAt }) => <Moment at={recordedAt} />, names: true },
            { head: t('hulls.enteredBy'), cell: ({ by }) => by, class: 'n' },
            { head: t('record.when'), cell: ({ happenedAt }) => <Moment at={happenedAt} /> },
            { head: t('hulls.correction'), cell: (version) => <Correction of={version} /> },
          ]}
          rows={versions}
        />
      )}
    </Answer>
  );
};

const Correction = ({ of: { correctedBecause, correctedAt, correctedBy } }: { readonly of: Version }) => {
  const { t } = useWords();
  if (correctedAt === null) return t('hulls.stands');
  return (
    <>
      {correctedBecause === null ? null : <Said text={correctedBecause} />}
      <p className="note soft">
        <Text of="hulls.correctedBy" with={{ by: correctedBy ?? '', at: <Moment at={correctedAt} /> }} />
      </p>
    </>
  );
};
