import { Link } from '@tanstack/react-router';
import type { Day } from '../day/now.js';
import { useNow } from '../day/use-day.js';
import { workOf, type Work } from '../day/work-of.js';
import { mark } from '../marks/mark.js';
import { Empty } from '../ui/page.js';
import { Said, Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { spanWords } from './span-words.js';

interface WorkListProps {
  readonly day: Day;
  readonly only?: readonly Work['what'][];
  readonly empty: string;
}

/** What is to be done, one row each: first where work stands still. A touch begins it. */
export const WorkList = ({ day, only, empty }: WorkListProps) => {
  const { t } = useWords();
  const now = useNow();
  const work = workOf(day.parts, now).filter(({ what }) => only === undefined || only.includes(what));
  const groups = [
    ['day.still', work.filter(({ still }) => still)],
    ['day.toDo', work.filter(({ still }) => !still)],
  ] as const;
  if (work.length === 0) return <Empty>{empty}</Empty>;
  return groups.map(([name, rows]) =>
    rows.length === 0 ? null : (
      <section key={name} aria-label={t(name)}>
        <h2>{t(name)}</h2>
        <ul className="st-tasks">
          {rows.map((each) => (
            <li key={`${each.part.number} ${each.layer.scheduled.code} ${each.what} ${each.reading}`}>
              <Row of={each} />
            </li>
          ))}
        </ul>
      </section>
    ),
  );
};

const Row = ({ of }: { readonly of: Work }) => {
  const { part, layer, what, reading, still } = of;
  const search = { part: part.number, layer: layer.scheduled.code };
  const inside = (
    <>
      <b className="n">{part.number}</b>
      <span>
        <span className="n">{layer.scheduled.code}</span> <Said text={layer.scheduled.name} />
      </span>
      <span className="st-what">{mark(still ? 'stopped' : 'to come', <What of={of} />)}</span>
    </>
  );
  if (what === 'make')
    return (
      <Link to="/station/layer" search={search}>
        {inside}
      </Link>
    );
  if (what === 'sign')
    return (
      <Link to="/station/sign" search={search}>
        {inside}
      </Link>
    );
  return (
    <Link to="/station/readings" search={{ ...search, what: reading ?? '' }}>
      {inside}
    </Link>
  );
};

const What = ({ of: { what, reading, count, window, layer } }: { readonly of: Work }) => {
  const { t } = useWords();
  if (what === 'sign') return t('day.sign', { holdPoint: layer.scheduled.holdPoint ?? '' });
  if (what === 'read') return <Text of="day.read" with={{ count, what: <Term word={reading ?? ''} /> }} />;
  if (what === 'read again') return <Text of="day.readAgain" with={{ count, what: <Term word={reading ?? ''} /> }} />;
  if (window === null) return t('day.make');
  if (window.state === 'passed') return t('day.makePassed');
  const time = spanWords(window.minutes ?? 0);
  if (window.state === 'wait') return t('day.makeWait', { time });
  return window.minutes === null || !Number.isFinite(window.minutes) ? t('day.make') : t('day.makeLeft', { time });
};
