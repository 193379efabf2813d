import { lazy, Suspense, useState } from 'react';
import type { Day, NowLayer } from '../day/now.js';
import { Loading } from '../asked/answer.js';
import { sourcesOf, unnamedSource, type Line, type Source } from '../day/propose.js';
import { unnamedFor } from '../day/unnamed.js';
import { Button } from '../ui/button.js';
import { TextField } from '../ui/text-field.js';
import { unitSign } from '../words/figures.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { ScanField } from './scan-field.js';

const FIELDS = { quantity: 'quantity' } as const;
/** So many sources are offered; any other is scanned. */
const OFFERED = 5;

interface MaterialLinesProps {
  readonly day: Day;
  readonly layer: NowLayer;
  readonly lines: readonly Line[];
  readonly today: string;
  readonly onChange: (lines: readonly Line[]) => void;
}

/** What the layer takes, one row a material; a touch changes what differs from the schedule. */
export const MaterialLines = ({ day, lines, today, onChange }: MaterialLinesProps) => {
  const { t } = useWords();
  const [opened, setOpened] = useState<number | null>(null);
  const [unknown, setUnknown] = useState('');
  const put = (i: number, line: Partial<Line>): void =>
    onChange(lines.map((each, k) => (k === i ? { ...each, ...line } : each)));
  const scanned = (i: number | null, code: string): void => {
    const lot = day.lots.find((each) => each.code === code || each.tank === code);
    const gun = day.guns.find((each) => each.code === code);
    setUnknown(lot || gun ? '' : code);
    const source: Source = gun
      ? { kind: 'gun', code, origin: 'gun', leftKg: null }
      : { kind: lot?.tank === code ? 'tank' : 'lot', code, origin: lot?.origin ?? '', leftKg: lot?.leftKg ?? null };
    const of = lot?.materials ?? gun?.feeds.flatMap(({ materials }) => materials) ?? [];
    const fits = lines.findIndex(({ materials }) => materials.some((material) => of.includes(material)));
    // A code that is not known here goes where there is no question; the service knows it, or refuses it.
    const at = i ?? (fits >= 0 ? fits : lines.length === 1 ? 0 : null);
    if (at !== null) put(at, { source });
    setOpened(null);
  };
  return (
    <>
      <ul className="st-lines">
        {lines.map((line, i) => (
          <li key={line.materials.join(' ')}>
            <Button className="st-line" onPress={() => setOpened(opened === i ? null : i)}>
              <LineWords day={day} line={line} />
            </Button>
            {opened === i ? (
              <div className="st-change">
                {sourcesOf(day, line.materials, today)
                  .slice(0, OFFERED)
                  .map((source) => (
                    <Button
                      key={`${source.kind} ${source.code}`}
                      onPress={() => {
                        put(i, { source });
                        setOpened(null);
                      }}
                    >
                      <span className="n">{source.code}</span>
                      <small>{t(`lay.origin.${source.origin}` as 'lay.origin.gun')}</small>
                    </Button>
                  ))}
                <Button onPress={() => put(i, { source: unnamedSource(unnamedFor(roleOf(day, line))) })}>
                  <span>{t('bay.from.unidentified')}</span>
                </Button>
                <TextField
                  name={FIELDS.quantity}
                  label={t('lay.amount', { unit: unitSign(line.unit) })}
                  kind="text"
                  value={line.quantity}
                  onChange={(quantity) => put(i, { quantity: quantity.replace(',', '.') })}
                />
              </div>
            ) : null}
            {line.source?.unnamed === undefined ? null : (
              <Suspense fallback={<Loading what={t('app.page')} />}>
                <LateUnnamedFields
                  of={line.source.unnamed}
                  onChange={(unnamed) => put(i, { source: unnamedSource(unnamed) })}
                />
              </Suspense>
            )}
          </li>
        ))}
      </ul>
      {unknown === '' ? null : <p className="wrong">{t('scan.unknown', { code: unknown })}</p>}
      <ScanField label={t('scan.lot')} onCode={(code) => scanned(opened, code)} />
    </>
  );
};

/** What a line is taken for: the role of the material that names it. */
const roleOf = (day: Day, { materials }: Line): string =>
  day.materials.find(({ code }) => code === materials[0])?.role ?? 'resin';

/** Few entries need it: it is fetched when it is asked for, and is on the tablet with the rest of the app. */
const LateUnnamedFields = lazy(async () => ({ default: (await import('../record/unnamed-fields.js')).UnnamedFields }));

const LineWords = ({
  day,
  line: { materials, quantity, unit, source },
}: {
  readonly day: Day;
  readonly line: Line;
}) => {
  const { t, plain } = useWords();
  const name = materials
    .map((code) => day.materials.find((material) => material.code === code)?.name ?? code)
    .slice(0, source?.origin === 'cut' ? undefined : 1)
    .join(', ');
  return (
    <>
      <span>
        <Said text={name} />
      </span>
      <span className="n">{quantity === '' ? '' : `${plain(quantity)} ${unitSign(unit)}`}</span>
      {source === null ? (
        <b className="wrong">{t('lay.noSource')}</b>
      ) : (
        <b>
          {t(`lay.origin.${source.origin}` as 'lay.origin.gun')} <span className="n">{source.code}</span>
        </b>
      )}
    </>
  );
};
