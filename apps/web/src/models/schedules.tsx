import { getRouteApi, Link } from '@tanstack/react-router';
import type { MaterialView, ModelView, ScheduleView } from '@hull-record/contracts';
import { useMay } from '../api/use-may.js';
import { Allowed } from '../entry/allowed.js';
import { Empty } from '../ui/page.js';
import { Table } from '../ui/table.js';
import { useWords } from '../words/use-words.js';
import { ChangesShown } from './changes-shown.js';
import { isPartKind, PART_KINDS, versionsOf, type PartKindName } from './part-kinds.js';
import { ScheduleSection } from './schedule-section.js';

const route = getRouteApi('/models/$model');

interface SchedulesProps {
  readonly model: ModelView;
  readonly materials: readonly MaterialView[];
}

const capital = (words: string): string => `${words.slice(0, 1).toUpperCase()}${words.slice(1)}`;

/** The schedules of a model: a line a kind of part, and the version that is asked for drawn below. */
export const Schedules = ({ model, materials }: SchedulesProps) => {
  const { t } = useWords();
  const { part, version } = route.useSearch();
  const first = PART_KINDS.find((kind) => versionsOf(model, kind).length > 0);
  const versions = versionsOf(model, isPartKind(part) ? part : (first ?? 'hull molding'));
  const shown = versions.find((each) => String(each.version) === version) ?? versions[0];
  return (
    <>
      {model.schedules.length === 0 ? <Empty>{t('models.noSchedules')}</Empty> : null}
      <Kinds model={model} shown={shown} />
      <Allowed to="publishSchedule" what={t('models.enter')}>
        {null}
      </Allowed>
      {shown === undefined ? null : <Shown schedule={shown} versions={versions} materials={materials} />}
    </>
  );
};

interface KindsProps {
  readonly model: ModelView;
  readonly shown: ScheduleView | undefined;
}

const Kinds = ({ model, shown }: KindsProps) => {
  const { t, term } = useWords();
  const may = useMay();
  const enter = (kind: PartKindName) => {
    const [newest] = versionsOf(model, kind);
    return (
      <Link to="/models/$model/schedule" params={{ model: model.code }} search={{ part: kind }}>
        {newest === undefined ? t('models.enterFirst') : t('models.enterNext', { version: newest.version + 1 })}
      </Link>
    );
  };
  return (
    <Table
      caption={t('models.kinds')}
      columns={[
        { head: t('models.part'), cell: (kind) => term(kind), names: true },
        {
          head: t('models.versions'),
          cell: (kind) => (
            <ul className="inline">
              {versionsOf(model, kind).map(({ version }) => (
                <li key={version}>
                  <Link
                    to="/models/$model"
                    params={{ model: model.code }}
                    search={{ part: kind, version: String(version) }}
                    resetScroll={false}
                    aria-current={shown?.partKind === kind && shown.version === version ? 'true' : undefined}
                  >
                    {t('models.version', { version })}
                  </Link>
                </li>
              ))}
            </ul>
          ),
        },
        ...(may('publishSchedule') ? [{ head: t('models.enter'), cell: enter }] : []),
      ]}
      rows={PART_KINDS}
    />
  );
};

interface ShownProps {
  readonly schedule: ScheduleView;
  /** The newest first. */
  readonly versions: readonly ScheduleView[];
  readonly materials: readonly MaterialView[];
}

const Shown = ({ schedule, versions, materials }: ShownProps) => {
  const { t, term } = useWords();
  const { partKind, version, process } = schedule;
  const at = versions.indexOf(schedule);
  const before = versions[at + 1];
  return (
    <>
      <h3>{t('models.shown', { kind: capital(term(partKind)), version })}</h3>
      <p className="soft">
        {t('models.process', { process: term(process) })} {t(at === 0 ? 'models.inForce' : 'models.notInForce')}
      </p>
      <ScheduleSection schedule={schedule} materials={materials} />
      <h3>{before === undefined ? t('models.firstVersion') : t('models.differs', { version: before.version })}</h3>
      {before === undefined ? null : <ChangesShown before={before} now={schedule} />}
    </>
  );
};
