import { useQueries, useQuery } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { ClaimView, DefectView, PartView } from '@hull-record/contracts';
import type { Skin } from '@hull-record/trade';
import { modelsQuery, partQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { together } from '../asked/together.js';
import { placeWords, sizeWords } from '../record/defect-words.js';
import { HullMap } from '../skin/hull-map.js';
import { Empty } from '../ui/page.js';
import { Table, type Column } from '../ui/table.js';
import { useWords } from '../words/use-words.js';

/** Where on the hull it is: the spots of the claim alone, each a defect of its part. */
export const ClaimedSpots = ({ claim }: { readonly claim: ClaimView }) => {
  const { t } = useWords();
  const parts = [...new Set(claim.defects.map(({ part }) => part))];
  const models = useQuery(modelsQuery);
  const found = useQueries({ queries: parts.map((part) => partQuery(part)), combine: together });
  if (parts.length === 0) return <Empty>{t('claims.noSpots')}</Empty>;
  return (
    <Answer what={t('claims.itsSpots')} query={models}>
      {(known) => (
        <Answer what={t('claims.itsSpots')} query={found}>
          {(views) =>
            views.map((part) => (
              <OnPart
                key={part.number}
                part={{ ...part, defects: part.defects.filter((each) => isOf(claim, part.number, each)) }}
                skin={skinOf(part, known)}
              />
            ))
          }
        </Answer>
      )}
    </Answer>
  );
};

const isOf = ({ defects }: ClaimView, part: string, { mark }: DefectView): boolean =>
  defects.some((each) => each.part === part && each.mark === mark);

type Models = { readonly code: string; readonly skins: Readonly<Record<string, Skin | undefined>> };

const skinOf = ({ model, kind }: PartView, models: readonly Models[]): Skin | undefined =>
  models.find(({ code }) => code === model)?.skins[kind];

const rowId = ({ id }: DefectView): string => `defect-${id}`;

interface OnPartProps {
  readonly part: PartView;
  readonly skin: Skin | undefined;
}

const OnPart = ({ part, skin }: OnPartProps) => {
  const { t, term } = useWords();
  return (
    <div className={skin === undefined ? undefined : 'map-and-list'}>
      {skin === undefined ? null : <HullMap part={part} skin={skin} rowId={rowId} />}
      <Table
        caption={t('claims.spotsOf', { part: part.number, kind: term(part.kind) })}
        columns={useSpotColumns()}
        rows={part.defects}
        rowId={rowId}
      />
    </div>
  );
};

const useSpotColumns = (): readonly Column<DefectView>[] => {
  const words = useWords();
  const { t, term } = words;
  return [
    {
      head: t('record.defect'),
      cell: ({ id, mark }) => (
        <Link to="/defects/$defect" params={{ defect: id }}>
          {mark}
        </Link>
      ),
      names: true,
      class: 'n',
    },
    { head: t('record.place'), cell: (defect) => placeWords(defect, words) },
    { head: t('claims.size'), cell: (defect) => sizeWords(defect, words) || '–' },
    { head: t('record.layer'), cell: ({ layer }) => layer ?? '–', class: 'n' },
    { head: t('record.state'), cell: ({ state }) => term(state) },
  ];
};
