import type { Stop } from '../day/stops-of.js';
import { mark } from '../marks/mark.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import type { ServiceStop } from './service-stop.js';

interface StopPanelProps {
  readonly here: readonly Stop[];
  readonly service: readonly ServiceStop[];
}

const RULES = {
  expired: 'lay.stop.expired',
  held: 'lay.stop.held',
  'not released': 'lay.stop.notReleased',
  'other material': 'lay.stop.otherMaterial',
  'not known': 'lay.stop.notKnown',
  'used up': 'lay.stop.usedUp',
  'made already': 'lay.stop.madeAlready',
  before: 'lay.stop.before',
  unsigned: 'lay.stop.unsigned',
  'window passed': 'lay.stop.windowPassed',
  unidentified: 'lay.stop.unidentified',
} as const satisfies Readonly<Record<Stop['rule'], string>>;

/** Stop: what is wrong before the act, why, and what to do. The service's own finding stands before the tablet's. */
export const StopPanel = ({ here, service }: StopPanelProps) => {
  const { t } = useWords();
  return (
    <div className="st-stop" role="alert">
      <p className="st-call">{mark('stopped', t('lay.stop.title'))}</p>
      <ul className="plain">
        {service.map(({ rule, detail, remedy }) => (
          <li key={`${rule} ${detail}`}>
            <b>
              <Said text={detail} />
            </b>{' '}
            <Said text={remedy} />
          </li>
        ))}
        {service.length > 0
          ? null
          : here.map(({ rule, about, detail }) => (
              <li key={`${rule} ${about}`}>{t(RULES[rule], { about, detail })}</li>
            ))}
      </ul>
    </div>
  );
};
