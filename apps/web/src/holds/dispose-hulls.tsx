import type { HeldHull } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { Found } from '../entry/found.js';
import { RecordForm } from '../entry/record-form.js';
import { Fold } from '../ui/fold.js';
import { useWords } from '../words/use-words.js';

const WHAT = ['found', 'checked', 'repaired', 'cleared', 'not reachable'] as const;
/** More than these are named by typing. */
const OFFERED = 40;

interface DisposeProps {
  readonly hold: string;
  readonly open: readonly HeldHull[];
}

/** Says of hulls what was found or done: those ticked, and those typed. */
export const DisposeHulls = ({ hold, open }: DisposeProps) => {
  const { t, term } = useWords();
  const offered = open.slice(0, OFFERED);
  const tick = ({ hull, part }: HeldHull): string => `tick ${hull ?? part ?? ''}`;
  return (
    <Fold summary={t('holds.dispose')}>
      <Allowed to="disposeHeld" what={t('holds.dispose')}>
        <RecordForm
          groups={[
            {
              name: t('holds.whichOpen'),
              fields: offered.map((each) => ({
                name: tick(each),
                label: each.hull ?? each.part ?? '',
                kind: 'tick' as const,
              })),
            },
            {
              fields: [
                {
                  name: 'others',
                  label: t('holds.others'),
                  hint: t('holds.othersHint'),
                  kind: 'words',
                  pointer: '/hulls',
                },
                {
                  name: 'what',
                  label: t('holds.disposition'),
                  kind: 'choice',
                  options: WHAT.map((each) => [each, term(each)]),
                  hint: t('holds.dispositionHint'),
                },
                { name: 'note', label: t('holds.note'), hint: t('holds.noteHint'), kind: 'words' },
                { name: 'evidence', label: t('holds.evidence'), hint: t('holds.evidenceHint'), kind: 'words' },
                { name: 'doneBy', label: t('holds.doneBy'), hint: t('holds.doneByHint') },
              ],
            },
          ]}
          button={t('holds.disposeDo')}
          late
          send={(said, envelope) => {
            const ticked = offered.filter((each) => said(tick(each)) === 'yes');
            return post(
              '/api/holds/:hold/dispositions',
              { hold },
              {
                ...envelope,
                hulls: [...ticked.flatMap(({ hull }) => hull ?? []), ...listOf(said('others'))],
                parts: ticked.flatMap(({ hull, part }) => (hull === null ? (part ?? []) : [])),
                what: said('what') as (typeof WHAT)[number],
                doneBy: listOf(said('doneBy')),
                ...given('note', said('note')),
                ...given('evidence', said('evidence')),
              },
            );
          }}
          done={({ result: { what, hulls } }) => (
            <Found of={{ result: {} }} words={t('holds.disposedNow', { hulls, what: term(what) })} />
          )}
        />
      </Allowed>
    </Fold>
  );
};

/** What stands between commas, spaces or lines. */
const listOf = (typed: string): string[] => typed.split(/[\s,;]+/).filter((each) => each !== '');
