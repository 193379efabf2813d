import { useQuery } from '@tanstack/react-query';
import { Link, useNavigate } from '@tanstack/react-router';
import type { DutyView, HoldView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { dutyQuery } from '../api/queries-of-holds.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { DueDates } from '../record/due-dates.js';
import { Fold } from '../ui/fold.js';
import { Facts } from '../ui/page.js';
import { CalendarDay } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const DECISIONS = ['none', 'fails a rule', 'substantial risk of injury'] as const;

/** What was decided about the duty to notify, the dates that run from it, and the day from which somebody might argue. */
export const Duty = ({ hold }: { readonly hold: HoldView }) => {
  const { t } = useWords();
  const query = useQuery(dutyQuery(hold.id));
  return (
    <Answer what={t('holds.theDuty')} query={query}>
      {(duty) => (
        <>
          <p className="caution">{t('holds.peopleDecide')}</p>
          <Decided duty={duty} />
          <DueDates dates={duty.dates} />
          {duty.notices.length === 0 ? null : (
            <p>
              {t('holds.notices')}{' '}
              {duty.notices.map(({ id, code }) => (
                <Link key={id} to="/notices/$notice" params={{ notice: code }} className="n">
                  {code}
                </Link>
              ))}
            </p>
          )}
          <Fold summary={t('holds.decide')}>
            <Allowed to="decideDuty" what={t('holds.decide')}>
              <Decide hold={hold.id} />
            </Allowed>
          </Fold>
          {duty.dates.some(({ dueOn }) => dueOn !== null) ? (
            <Fold summary={t('holds.giveNotice')}>
              <Allowed to="giveNotice" what={t('holds.giveNotice')}>
                <Give hold={hold.id} />
              </Allowed>
            </Fold>
          ) : null}
        </>
      )}
    </Answer>
  );
};

const Decided = ({ duty: { decisions, arguable } }: { readonly duty: DutyView }) => {
  const { t, term } = useWords();
  const last = decisions.at(-1);
  const [first] = arguable;
  return (
    <>
      <p className="verdict">{last === undefined ? t('holds.notDecidedYet') : term(last.decision)}</p>
      <Facts
        rows={[
          [t('holds.discoveredOn'), last === undefined ? null : <CalendarDay at={last.discoveredOn} />],
          [t('holds.decidedBy'), last === undefined ? null : <span className="n">{last.decidedBy}</span>],
          [t('holds.why'), last === undefined ? null : <Said text={last.why} />],
          [t('holds.rule'), !last?.rule ? null : <Said text={last.rule} />],
          [t('holds.counsel'), !last?.counsel ? null : <Said text={last.counsel} />],
          [
            t('holds.earliest'),
            first === undefined ? null : (
              <>
                <CalendarDay at={first.on} /> <Said text={first.what} />
              </>
            ),
          ],
        ]}
      />
    </>
  );
};

const Decide = ({ hold }: { readonly hold: string }) => {
  const { t, term } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            {
              name: 'decision',
              label: t('holds.decision'),
              kind: 'choice',
              options: DECISIONS.map((each) => [each, term(each)]),
              hint: t('holds.decisionHint'),
            },
            { name: 'discoveredOn', label: t('holds.discoveredOn'), kind: 'day', hint: t('holds.discoveredHint') },
            { name: 'decidedBy', label: t('holds.decidedBy'), hint: t('holds.decidedByHint') },
            { name: 'why', label: t('holds.why'), kind: 'words' },
            { name: 'rule', label: t('holds.rule'), kind: 'words', hint: t('holds.ruleHint') },
            { name: 'counsel', label: t('holds.counsel'), kind: 'words' },
          ],
        },
      ]}
      button={t('holds.decideDo')}
      send={(said, envelope) =>
        post(
          '/api/holds/:hold/duty-decisions',
          { hold },
          {
            ...envelope,
            decision: said('decision') as (typeof DECISIONS)[number],
            discoveredOn: said('discoveredOn'),
            decidedBy: said('decidedBy'),
            why: said('why'),
            ...given('rule', said('rule')),
            ...given('counsel', said('counsel')),
          },
        )
      }
      done={({ result }) => (
        <Found of={{ result: {} }} words={t('holds.decidedNow', { decision: term(result.decision) })} />
      )}
    />
  );
};

const TEXTS = ['defect', 'hazard', 'measures', 'undertaking'] as const;

const Give = ({ hold }: { readonly hold: string }) => {
  const { t } = useWords();
  const navigate = useNavigate();
  const at = (name: string): string => `/contents/${name}`;
  return (
    <RecordForm
      groups={[
        {
          fields: [
            { name: 'code', label: t('notices.code') },
            ...TEXTS.map((name) => ({ name, label: t(`notices.${name}`), kind: 'lines' as const, pointer: at(name) })),
            { name: 'manufacturer', label: t('notices.manufacturer'), kind: 'words', pointer: at('manufacturer') },
            { name: 'address', label: t('notices.address'), kind: 'words', pointer: at('address') },
            { name: 'make', label: t('notices.make'), pointer: at('make') },
            { name: 'contact', label: t('notices.contact'), kind: 'words', pointer: at('contact') },
          ],
        },
      ]}
      button={t('holds.giveNoticeDo')}
      send={(said, envelope) =>
        post(
          '/api/holds/:hold/notices',
          { hold },
          {
            ...envelope,
            code: said('code'),
            contents: {
              ...{ defect: said('defect'), hazard: said('hazard'), measures: said('measures') },
              ...{ undertaking: said('undertaking'), manufacturer: said('manufacturer') },
              ...{ address: said('address'), make: said('make') },
              ...given('contact', said('contact')),
            },
          },
        )
      }
      done={({ result }) => <Found of={{ result: {} }} words={t('holds.noticeGiven', { code: result.code })} />}
      onDone={({ result }) => void navigate({ to: '/notices/$notice', params: { notice: result.code } })}
    />
  );
};
