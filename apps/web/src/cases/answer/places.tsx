import type { CasePlaces } from '@hull-record/contracts';
import { BoundedTable } from '../../record/bounded-table.js';
import { Said } from '../../words/text.js';
import { useWords } from '../../words/use-words.js';
import { Drawing } from './drawing.js';
import { chance } from './figures.js';

type Zone = CasePlaces['zones'][number];

const [WIDTH, HEIGHT, TOP, SKIN] = [720, 320, 26, 260];

/** Where on the hull: hulls affected zone by zone, spots, and the group of zones that stands out most. */
export const Places = ({ of }: { readonly of: CasePlaces }) => {
  const words = useWords();
  const { t, figure, percent } = words;
  const most = Math.max(1, ...of.zones.map(({ hulls }) => hulls));
  const { cluster } = of;
  return (
    <>
      <Drawing
        words={of.sentence}
        width={WIDTH}
        height={HEIGHT}
        not={<Said text={of.cannotSay} />}
        table={
          <BoundedTable
            what={t('cases.zones')}
            caption={t('cases.zoneTable')}
            columns={[
              { head: t('cases.zone'), cell: ({ name }) => name, names: true },
              { head: t('cases.hullsAffected'), cell: ({ hulls }) => hulls, class: 'r n' },
              { head: t('cases.areaShare'), cell: ({ areaShare }) => percent(areaShare), class: 'r n' },
              { head: t('cases.perArea'), cell: ({ perArea }) => figure(perArea), class: 'r n' },
              {
                head: t('cases.standsOut'),
                cell: ({ name }) => (cluster?.zones.includes(name) ? t('cases.inCluster') : '–'),
              },
            ]}
            rows={of.zones}
          />
        }
      >
        <text x={WIDTH / 2} y={16} textAnchor="middle">
          {t('cases.mapPort')}
        </text>
        {of.zones.map((zone) => (
          <ZoneDrawn
            key={zone.name}
            zone={zone}
            shade={zone.hulls === 0 ? null : Math.min(3, Math.floor((4 * zone.hulls) / (most + 1)))}
          />
        ))}
        {of.zones
          .filter(({ name }) => cluster?.zones.includes(name))
          .map((zone) => (
            <rect key={zone.name} className="stands-out" {...boxOf(zone)} />
          ))}
        <path className="keel" d={`M0 ${TOP + SKIN / 2}H${WIDTH}`} />
        <path className="dots" d={of.spots.map(({ x, y }) => `M${xOf(x)} ${yOf(y)}h0`).join('')} />
        <text x={0} y={HEIGHT - 8}>
          {t('cases.mapBow')}
        </text>
        <text x={WIDTH / 2} y={HEIGHT - 8} textAnchor="middle">
          {t('cases.mapStarboard')}
        </text>
        <text x={WIDTH} y={HEIGHT - 8} textAnchor="end">
          {t('cases.mapTransom')}
        </text>
      </Drawing>
      {cluster === null ? null : (
        <p>
          {t('cases.cluster', {
            hulls: cluster.hulls,
            expected: figure(cluster.expected),
            p: chance(cluster.p, words),
          })}
        </p>
      )}
    </>
  );
};

/** Seen from below, as every hull map: the bow on the left, port above. */
const xOf = (x: number): number => Math.round(WIDTH * (1 - x));
const yOf = (y: number): number => Math.round(TOP + (SKIN * (1 - y)) / 2);

/** A zone is half as high as its side, and as wide as its share of the skin then makes it. */
const boxOf = ({ x, y, areaShare }: Zone) => {
  const along = areaShare * 4;
  return {
    x: xOf(x + along / 2),
    y: yOf(y + 0.25),
    width: Math.round(WIDTH * along),
    height: Math.round(SKIN / 4),
  };
};

interface ZoneDrawnProps {
  readonly zone: Zone;
  readonly shade: number | null;
}

const ZoneDrawn = ({ zone, shade }: ZoneDrawnProps) => {
  const box = boxOf(zone);
  return (
    <>
      <rect className="zone" {...box} />
      {shade === null ? null : <rect className={`shade shade-${shade}`} {...box} />}
      <text className="n b" x={box.x + 6} y={box.y + 16}>
        {zone.hulls}
      </text>
    </>
  );
};
