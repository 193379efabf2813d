import type { ReactNode } from 'react';
import { Joined } from '../ui/joined.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { Folded } from './folded.js';
import { LotLink } from './links.js';

type Path = readonly { readonly lot: string; readonly origin: string }[];

/** The ways of a received lot into a place, the shortest first: directly, or through which buckets, tank fills and kits. */
export const Paths = ({ paths }: { readonly paths: readonly Path[] }): ReactNode => {
  const { t } = useWords();
  const ways = [...paths].sort((a, b) => a.length - b.length).map((path, i) => <Way key={i} steps={path} />);
  return ways.length === 1 ? (
    ways[0]
  ) : (
    <Folded items={ways} atMost={1} more={(count) => t('record.moreWays', { count })} />
  );
};

const ARROW = ' → ';

const Way = ({ steps }: { readonly steps: Path }): ReactNode => {
  const { t } = useWords();
  if (steps.length < 2) return t('record.directly');
  const lots = (
    <span className="n">
      <Joined by={ARROW}>
        {steps.map(({ lot }, i) => (
          <LotLink key={i} to={lot} />
        ))}
      </Joined>
    </span>
  );
  return <Text of="record.by" with={{ lots }} />;
};
