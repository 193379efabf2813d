import { useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { HullView, PartView } from '@hull-record/contracts';
import type { ReactElement, ReactNode } from 'react';
import { paperPath } from '../api/ask.js';
import { partQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { RecomputingNote } from '../asked/recomputing-note.js';
import { Section } from '../ui/page.js';
import { Moment } from '../words/moments.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { Defects } from './defects.js';
import { LaminateSection } from './laminate-section.js';
import { Nonconformities } from './nonconformities.js';
import type { Reference } from './reference.js';
import { Repairs } from './repairs.js';
import { TouchUps } from './touch-ups.js';
import { WholeReadings } from './whole-readings.js';

interface PartSectionProps {
  readonly part: HullView['parts'][number];
  readonly reference: Reference;
}

const capital = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;

/** One part of a hull: its laminate section, its defects on the hull map, its repairs. */
export const PartSection = ({ part, reference }: PartSectionProps) => {
  const { t, term } = useWords();
  const query = useQuery(partQuery(part.number));
  const { mold, scheduleVersion: version, layersMade: made, layersScheduled: all } = part;
  const model = query.data?.model ?? reference.model?.code;
  const since = {
    ...{ mold, version, made, all, at: <Moment at={part.joinedAt} /> },
    schedule: (inside: ReactNode[]): ReactElement =>
      model === undefined ? (
        <>{inside}</>
      ) : (
        <Link to="/models/$model" params={{ model }} search={{ part: part.kind, version: String(version) }}>
          {inside}
        </Link>
      ),
  };
  return (
    <Section name={`${capital(term(part.kind))} ${part.number}`}>
      <p className="soft">
        <Text of={part.kind === 'hull molding' ? 'hulls.partBegun' : 'hulls.partJoined'} with={since} />
      </p>
      <Answer what={t('hulls.part', { part: part.number })} query={query}>
        {(view) => (
          <>
            <RecomputingNote of={view.recomputing} />
            <Papers of={view} />
            <LaminateSection part={view} materials={reference.materials} />
            <Defects part={view} model={reference.model} />
            <Repairs part={view} />
            <TouchUps part={view} />
            <WholeReadings part={view} />
            <Nonconformities part={view} />
          </>
        )}
      </Answer>
    </Section>
  );
};

/** Papers for the bay; an order to repair where a defect is open. */
const Papers = ({ of: { number, defects } }: { readonly of: PartView }) => {
  const { t } = useWords();
  return (
    <p>
      <a href={paperPath('/api/parts/:part/hold-points.pdf', { part: number })}>{t('hulls.holdPointSheet')}</a>
      {defects.some(({ state }) => state === 'open') ? (
        <>
          {', '}
          <a href={paperPath('/api/parts/:part/repair-order.pdf', { part: number })}>{t('hulls.repairOrder')}</a>
        </>
      ) : null}
      <span className="soft"> {t('hulls.pdf')}</span>
    </p>
  );
};
