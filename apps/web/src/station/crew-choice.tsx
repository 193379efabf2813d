import type { Day } from '../day/now.js';
import { Fold } from '../ui/fold.js';
import { Toggle } from '../ui/toggle.js';
import { useWords } from '../words/use-words.js';

interface CrewChoiceProps {
  readonly people: Day['people'];
  readonly crew: readonly string[];
  readonly onChange: (crew: readonly string[]) => void;
}

const LAYS: readonly string[] = ['laminator', 'shift lead'];

/** Who made the layer: whoever enters it, or a crew that somebody enters for. Who signs later was not of it. */
export const CrewChoice = ({ people, crew, onChange }: CrewChoiceProps) => {
  const { t } = useWords();
  const badges = people.filter(({ roles }) => roles.some((role) => LAYS.includes(role))).map(({ badge }) => badge);
  const all = [...new Set([...crew, ...badges])].sort();
  return (
    <Fold summary={t('lay.crew', { by: crew.join(', ') || '–' })} className="st-fold">
      <div className="st-parts" role="group" aria-label={t('lay.whoMade')}>
        {all.map((badge) => (
          <Toggle
            key={badge}
            on={crew.includes(badge)}
            onChange={(on) => onChange(on ? [...crew, badge] : crew.filter((each) => each !== badge))}
          >
            <span className="n">{badge}</span>
          </Toggle>
        ))}
      </div>
    </Fold>
  );
};
