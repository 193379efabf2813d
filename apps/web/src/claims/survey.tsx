import type { ClaimView } from '@hull-record/contracts';
import { mark } from '../marks/mark.js';
import { Empty, Facts } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** Hours ashore and what a moisture meter showed: figures of that meter on its scale, and never a share of water. */
export const Survey = ({ claim: { hoursAshore, moisture, says } }: { readonly claim: ClaimView }) => {
  const { t, term, figure } = useWords();
  return (
    <>
      <Facts
        rows={[
          [t('claims.hoursAshore'), hoursAshore === null ? t('record.notKnown') : `${figure(hoursAshore, 4)} h`],
          [t('claims.meter'), moisture === null ? null : <Said text={moisture.meter} />],
          [t('claims.scale'), moisture === null ? null : <Said text={moisture.scale} />],
          [t('claims.coating'), moisture === null ? null : term(moisture.coating)],
        ]}
      />
      {moisture === null ? (
        <Empty>{t('claims.noSurvey')}</Empty>
      ) : (
        <Readings readings={moisture.readings} scale={moisture.scale} />
      )}
      <ul className="plain">
        {says.map((each) => (
          <li key={each}>{mark('near', <Said text={each} />)}</li>
        ))}
      </ul>
    </>
  );
};

type Moisture = NonNullable<ClaimView['moisture']>;

const Readings = ({ readings, scale }: Pick<Moisture, 'readings' | 'scale'>) => {
  const { t, term, figure } = useWords();
  return (
    <>
      <Table
        caption={t('claims.readings', { scale })}
        columns={[
          { head: t('claims.reading'), cell: ({ number }) => number, names: true, class: 'n' },
          { head: t('claims.meterSays'), cell: ({ value }) => figure(value, 5), class: 'r n' },
          {
            head: t('record.place'),
            cell: ({ place }) => {
              if (place === undefined) return t('record.notKnown');
              const side = term(place.side);
              const mm = (value: number): string => figure(value, 4);
              return place.surface === 'shell'
                ? t('record.onShell', { side, along: mm(place.fromTransomMm), girth: mm(place.girthMm) })
                : t('record.onTransom', { side, offset: mm(place.offsetMm), height: mm(place.heightMm) });
            },
          },
        ]}
        rows={readings.map((each, i) => ({ ...each, number: i + 1 }))}
      />
      <p className="note soft">{t('claims.relative')}</p>
    </>
  );
};
