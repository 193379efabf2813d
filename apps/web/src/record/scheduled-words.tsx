import type { PartView } from '@hull-record/contracts';
import { Said, Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

type Layer = PartView['layers'][number];

interface ScheduledWordsProps {
  readonly layer: Pick<Layer['scheduled'], 'code' | 'name' | 'plies' | 'zone'>;
  readonly demand: Layer['demand'];
  /** Whether its name stands out. */
  readonly isBold: boolean;
}

/** What a layer is by its schedule: code and name, plies, zone, and what it is to become. */
export const ScheduledWords = ({ layer: { code, name, plies, zone }, demand, isBold }: ScheduledWordsProps) => (
  <>
    <p className={isBold ? 'name b' : 'name'}>
      <span className="n">{code}</span> <Said text={name} />
    </p>
    {plies.length === 0 ? null : (
      <p>
        <Said text={plies.join(', ')} />
      </p>
    )}
    {zone === 'whole part' ? null : (
      <p>
        <Text of="hulls.zone" with={{ zone: <Term word={zone} /> }} />
      </p>
    )}
    {demand === null ? null : <Demand of={demand} />}
  </>
);

/** What the layer is to become and to take, without waste. */
const Demand = ({ of: { thicknessMm, glassKg, resinKg } }: { readonly of: NonNullable<Layer['demand']> }) => {
  const { t, figure, mass } = useWords();
  const words = [
    t('hulls.bySchedule', { mm: figure(thicknessMm, 3) }),
    ...(glassKg === null ? [] : [t('hulls.glass', { mass: mass(glassKg, 3) })]),
    ...(resinKg === null ? [] : [t('hulls.resin', { mass: mass(resinKg, 3) })]),
  ];
  return <p className="note">{words.join(', ')}</p>;
};
