import { useQueries } from '@tanstack/react-query';
import { Link } from '@tanstack/react-router';
import type { MaterialView, PartView } from '@hull-record/contracts';
import type { Skin } from '@hull-record/trade';
import type { ReactNode } from 'react';
import { materialsQuery, modelsQuery, partQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { together } from '../asked/together.js';
import { Empty, Page } from '../ui/page.js';
import { Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';

/** A part with what its pages in the bay draw and choose from. */
export interface AtPart {
  readonly part: PartView;
  readonly skin: Skin | undefined;
  readonly materials: readonly MaterialView[];
}

interface PartFrameProps {
  readonly number: string;
  /** What is done here. */
  readonly task: string;
  readonly children: (at: AtPart) => ReactNode;
}

/** A page about one part in the bay: which part of which hull, what is done, and the way back. */
export const PartFrame = ({ number, task, children }: PartFrameProps) => {
  const { t } = useWords();
  const query = useQueries({ queries: [partQuery(number), modelsQuery, materialsQuery], combine: together });
  return (
    <div className="bay">
      <Page title={`${task} · ${number}`} kind={task} name={number}>
        <Answer what={t('bay.what', { part: number })} query={query} notThere={<NoPart number={number} />}>
          {([part, models, materials]) => (
            <>
              <OfHull part={part} />
              {children({ part, materials, skin: skinOf(part, models) })}
            </>
          )}
        </Answer>
      </Page>
    </div>
  );
};

type Models = readonly { readonly code: string; readonly skins: Readonly<Record<string, Skin>> | object }[];

const skinOf = ({ model, kind }: PartView, models: Models): Skin | undefined => {
  const skins = models.find(({ code }) => code === model)?.skins;
  return (skins as Readonly<Record<string, Skin>> | undefined)?.[kind];
};

const OfHull = ({ part: { kind, hull } }: { readonly part: PartView }) => {
  const of = <Term word={kind} />;
  return (
    <p className="soft">
      {hull === null ? (
        <Text of="bay.ofNoHull" with={{ kind: of }} />
      ) : (
        <Text
          of="bay.ofHull"
          with={{
            kind: of,
            hull: (
              <Link to="/hulls/$number" params={{ number: hull }}>
                {hull}
              </Link>
            ),
          }}
        />
      )}
    </p>
  );
};

const NoPart = ({ number }: { readonly number: string }) => (
  <Empty>
    <Text of="bay.noPart" with={{ part: number, bay: (inside) => <Link to="/station/bay">{inside}</Link> }} />
  </Empty>
);
