import type { ModelView } from '@hull-record/contracts';
import { zonesAlong, type Skin } from '@hull-record/trade';
import { Fold } from '../ui/fold.js';
import { Table } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { PART_KINDS } from './part-kinds.js';
import { SkinFigure } from './skin-figure.js';

/** The skins of a model's parts, unrolled to scale, with the zones along the hull and the girths they are made from. */
export const Geometry = ({ of: { skins } }: { readonly of: ModelView }) =>
  PART_KINDS.map((kind) => {
    const skin = skins[kind];
    return skin === undefined ? null : <OneSkin key={kind} kind={kind} skin={skin} />;
  });

interface OneSkinProps {
  readonly kind: string;
  readonly skin: Skin;
}

const OneSkin = ({ kind, skin }: OneSkinProps) => {
  const { t, term, figure } = useWords();
  const m = (mm: number): string => t('models.m', { m: figure(mm / 1000, 4) });
  const { transom } = skin;
  return (
    <>
      <h3>{t('models.skinOf', { kind: term(kind) })}</h3>
      <div className="skin-and-zones">
        <SkinFigure kind={kind} skin={skin} />
        <div>
          <Table
            caption={t('models.zones', { kind: term(kind) })}
            columns={[
              { head: t('models.zone'), cell: ({ zone }) => term(zone), names: true },
              { head: t('models.from'), cell: ({ fromMm }) => m(fromMm), class: 'r' },
              { head: t('models.to'), cell: ({ toMm }) => m(toMm), class: 'r' },
            ]}
            rows={zonesAlong(skin.lengthMm).map((each) => ({
              ...each,
              zone: each.zone === 'between' ? 'between the named zones' : each.zone,
            }))}
          />
          <p className="note soft">{t('models.zonesSource')}</p>
          {transom === undefined ? null : (
            <p>{t('models.transom', { half: figure(transom.halfWidthMm), height: figure(transom.heightMm) })}</p>
          )}
          <Fold summary={t('models.stations')}>
            <Stations kind={kind} skin={skin} />
          </Fold>
        </div>
      </div>
    </>
  );
};

const Stations = ({ kind, skin }: OneSkinProps) => {
  const { t, term, figure } = useWords();
  const mm = (value: number | undefined): string => (value === undefined ? '–' : figure(value));
  return (
    <Table
      caption={t('models.stationsOf', { kind: term(kind) })}
      columns={[
        { head: t('models.station'), cell: ({ xMm }) => figure(xMm), names: true, class: 'r' },
        { head: t('models.edge'), cell: ({ edgeGirthMm }) => mm(edgeGirthMm), class: 'r' },
        { head: t('models.chine'), cell: ({ chineGirthMm }) => mm(chineGirthMm), class: 'r' },
        { head: t('models.waterline'), cell: ({ waterlineGirthMm }) => mm(waterlineGirthMm), class: 'r' },
      ]}
      rows={skin.stations}
    />
  );
};
