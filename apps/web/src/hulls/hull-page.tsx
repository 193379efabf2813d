import { useQueries } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { HullView } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { hullQuery, materialsQuery, modelsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { together } from '../asked/together.js';
import { Whereabouts } from '../record/whereabouts.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { CalendarDay, Day } from '../words/moments.js';
import { Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { ClaimsOfHull } from './claims-of-hull.js';
import { Documents } from './documents.js';
import { Fitted } from './fitted.js';
import { Certificates } from './certificates.js';
import { Life, Numbers } from './life.js';
import { LotsInHull } from './lots-in-hull.js';
import { PartSection } from './part-section.js';
import type { Reference } from './reference.js';
import { InTheWay, ReleaseLine } from './release.js';

const route = getRouteApi('/hulls/$number');

/** One hull, by its number or by any HIN it ever had: all that is recorded of it. */
export const HullPage = () => {
  const { t } = useWords();
  const { number } = route.useParams();
  const query = useQueries({ queries: [hullQuery(number), modelsQuery, materialsQuery], combine: together });
  return (
    <Page title={t('hulls.title', { number })} kind={t('record.hull')} name={query.data?.[0].number ?? number}>
      <Answer what={t('hulls.hull', { number })} query={query} notThere={<NotThere number={number} />}>
        {([hull, models, materials]) => (
          <Hull hull={hull} reference={{ model: models.find(({ code }) => code === hull.model), materials }} />
        )}
      </Answer>
    </Page>
  );
};

interface HullProps {
  readonly hull: HullView;
  readonly reference: Reference;
}

const Hull = ({ hull, reference }: HullProps) => (
  <>
    <div className="head">
      <Identity hull={hull} />
      <div className="release">
        <ReleaseLine release={hull.release} />
        <Paper number={hull.number} />
        <ClaimsOfHull number={hull.number} />
      </div>
    </div>
    <InTheWay release={hull.release} />
    {hull.parts.map((part) => (
      <PartSection key={part.number} part={part} reference={reference} />
    ))}
    <Certificates number={hull.number} released={hull.release.releasedAt !== null} />
    <LotsInHull number={hull.number} />
    <Fitted number={hull.number} />
    <div className="pair">
      <Life life={hull.life} />
      <Numbers numbers={hull.numbers} />
    </div>
    <Documents hull={hull} />
  </>
);

const Identity = ({ hull }: { readonly hull: HullView }) => {
  const { t } = useWords();
  const [begun] = hull.life;
  return (
    <Facts
      rows={[
        [t('record.hin'), hull.hin === null ? t('hulls.hinNotYet') : <span className="n">{hull.hin}</span>],
        [
          t('record.model'),
          <>
            {hull.modelName} (
            <Link to="/models/$model" params={{ model: hull.model }}>
              {hull.model}
            </Link>
            )
          </>,
        ],
        [t('record.begun'), begun === undefined ? null : <Day at={begun.happenedAt} />],
        [t('record.now'), <Whereabouts now={hull.now} />],
        [t('hulls.keepUntil'), hull.keepUntil === null ? null : <CalendarDay at={hull.keepUntil.day} />],
      ]}
    />
  );
};

const Paper = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  return (
    <p>
      <a href={paperPath('/api/hulls/:number/build-record.pdf', { number })}>{t('hulls.buildRecord')}</a>
      <span className="soft"> {t('hulls.buildRecordIs')}</span>
    </p>
  );
};

const NotThere = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  return (
    <Section name={t('hulls.notOnRecord')}>
      <Empty>
        <Text of="hulls.notThere" with={{ number, list: (inside) => <Link to="/hulls">{inside}</Link> }} />
      </Empty>
    </Section>
  );
};
