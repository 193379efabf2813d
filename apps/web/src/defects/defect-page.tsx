import { useQueries } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import type { DefectSuspects, DefectView } from '@hull-record/contracts';
import { defectQuery, suspectsQuery } from '../api/queries.js';
import { Answer } from '../asked/answer.js';
import { RecomputingNote } from '../asked/recomputing-note.js';
import { together } from '../asked/together.js';
import { DefectMark } from '../marks/defect-mark.js';
import { placeWords, sizeWords } from '../record/defect-words.js';
import { HullLink } from '../record/links.js';
import { Shots } from '../record/shots.js';
import { Empty, Facts, Page, Section } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { Moment } from '../words/moments.js';
import { Said, Term, Text } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { useSuspectColumns } from './use-suspect-columns.js';

const route = getRouteApi('/defects/$defect');

/** One defect: the lots in its layer and place, and the other hulls that hold each of them. */
export const DefectPage = () => {
  const { t } = useWords();
  const { defect: id } = route.useParams();
  const query = useQueries({ queries: [defectQuery(id), suspectsQuery(id)], combine: together });
  const name = query.data === undefined ? t('defects.title') : t('defects.name', query.data[0]);
  return (
    <Page title={name} name={name}>
      <Answer what={t('defects.what')} query={query} notThere={<NotThere />}>
        {([defect, suspects]) => (
          <>
            <Identity defect={defect} hull={suspects.hull} />
            <AtStation defect={defect} />
            <Photos of={defect} />
            <Suspects of={suspects} />
          </>
        )}
      </Answer>
    </Page>
  );
};

interface IdentityProps {
  readonly defect: DefectView;
  readonly hull: string | null;
}

const Identity = ({ defect, hull }: IdentityProps) => {
  const words = useWords();
  const { t } = words;
  const onHull = hull === null ? t('defects.inNoHull') : <HullLink to={hull} />;
  return (
    <Facts
      rows={[
        [t('record.hull'), <span className={hull === null ? undefined : 'n'}>{onHull}</span>],
        [t('record.defect'), `${words.kind(defect.kind)} ${sizeWords(defect, words)}`],
        [t('record.layer'), defect.layer ?? t('record.notKnown')],
        [t('record.place'), placeWords(defect, words)],
        [
          t('record.outcome'),
          <DefectMark state={defect.state}>
            <Term word={defect.state} />
          </DefectMark>,
        ],
        [t('record.found'), <Moment at={defect.happenedAt} />],
      ]}
    />
  );
};

/** The way to the work on it: at the station, where it is repaired and judged. */
const AtStation = ({ defect: { part, mark, state } }: { readonly defect: DefectView }) => (
  <p>
    <Text
      of={state === 'open' ? 'defects.toRepair' : 'defects.atStation'}
      with={{
        mark,
        station: (inside) => (
          <Link to="/station/bay/$part" params={{ part }}>
            {inside}
          </Link>
        ),
      }}
    />
  </p>
);

const Photos = ({ of: { photos } }: { readonly of: DefectView }) => {
  const { t } = useWords();
  return (
    <Section name={t('defects.photos')}>
      {photos.length === 0 ? <p>{t('defects.noPhotos')}</p> : <Shots photos={photos} />}
    </Section>
  );
};

const Suspects = ({ of: { lots, looksAt, recomputing } }: { readonly of: DefectSuspects }) => {
  const { t } = useWords();
  const columns = useSuspectColumns();
  return (
    <Section name={t('defects.lots')}>
      <RecomputingNote of={recomputing} />
      <p>
        <Said text={looksAt} />
      </p>
      {lots.length === 0 ? (
        <Empty>{t('defects.noLots')}</Empty>
      ) : (
        <Table caption={t('defects.caption')} columns={columns} rows={lots} />
      )}
      <p className="note soft">
        {t('record.wellMixed')} {t('defects.associated')}
      </p>
    </Section>
  );
};

const NotThere = () => (
  <Empty>
    <Text of="defects.notThere" with={{ list: (inside) => <Link to="/hulls">{inside}</Link> }} />
  </Empty>
);
