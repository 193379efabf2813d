import type { Recipient } from '@hull-record/contracts';
import type { AuthorityReportView, LettersView, NoticeText } from '@hull-record/paper';
import { datesOf, WHO_DECIDES } from '../../../platform/notices/load-duty.js';
import { modelsOf } from '../../../platform/notices/models-of.js';
import type { NoticePaper } from './load-notice-paper.js';

const textOf = ({ notice, state }: NoticePaper): NoticeText => ({
  ...notice.contents,
  contact: notice.contents.contact ?? null,
  models: modelsOf(state.noticed).map(({ model, from, until }) =>
    from === until ? `${model}, made in ${from}` : `${model}, made from ${from} to ${until}`,
  ),
});

/** Words the letters of a notice; nobody whose address is not kept has one. */
export const wordLetters = (facts: NoticePaper, recipients: readonly Recipient[]): LettersView => ({
  ...facts.paper,
  notice: facts.notice.code,
  text: textOf(facts),
  says: WHO_DECIDES,
  letters: recipients.flatMap(({ name, address, kind, hulls }) =>
    name === null || address === null
      ? []
      : [
          {
            to: [name, ...address.split(/\n|, /)],
            as: kind,
            boats: facts.state.noticed
              .filter(({ hull }) => hulls.includes(hull))
              .map(({ hull, hin, modelName }) => ({ hull, hin, model: modelName })),
          },
        ],
  ),
});

/** Words the draft of the initial report (33 CFR 179.13). */
export const wordInitialReport = (facts: NoticePaper): AuthorityReportView => ({
  ...base(facts),
  name: 'Initial report, draft',
  source: '33 CFR 179.13: concurrently with the notice, by certified mail',
  facts: [
    ['Affected', `${facts.state.figures.affected}, the best estimate of the total number potentially affected`],
    ['Of which', hullsWords(facts)],
    ['Contained', `${facts.state.contained.length} that have not left the place of manufacture, not counted`],
  ],
  missing: [
    ...(facts.state.notifiedOn === null ? ['Not everybody has been written to: say why and until when (179.13).'] : []),
    ...(facts.state.outside.length === 0
      ? []
      : [
          `${facts.state.outside.length} were made more than ten years before discovery, 46 USC 4310(c)(2), and are left out.`,
        ]),
  ],
});

/** Words the draft of the follow-up report (33 CFR 179.15). */
export const wordFollowUp = (facts: NoticePaper): AuthorityReportView => {
  const initial = facts.state.reports.find(({ what }) => what === 'initial');
  const { discovered, completed, notNotified, affected } = facts.state.figures;
  return {
    ...base(facts),
    name: 'Follow-up report, draft',
    source: '33 CFR 179.15(a): within 60 days after the initial report',
    facts: [
      [
        '(1) Report',
        initial === undefined
          ? 'no initial report is recorded'
          : `initial report of ${initial.sentOn}${initial.proof === null ? '' : `, ${initial.proof}`}`,
      ],
      ['(2) Discovered', `${discovered} units in which the defect was discovered`],
      ['(3) Completed', `${completed} units in which correction is completed`],
      ['(4) Not told', `${notNotified} first purchasers not notified because of an out-of-date name or address`],
      [
        '(5) Update',
        `${affected} potentially affected; the initial report gave ${initial?.figures.affected ?? 'no number'}`,
      ],
    ],
    missing: initial === undefined ? ['The initial report that this one follows is not recorded.'] : [],
  };
};

const hullsWords = ({ state }: NoticePaper): string =>
  state.noticed.map(({ hull, hin }) => (hin === null ? hull : `${hull} (${hin})`)).join(', ') || 'none';

const base = (facts: NoticePaper) => ({
  ...facts.paper,
  notice: facts.notice.code,
  text: textOf(facts),
  says: WHO_DECIDES,
  chronology: chronologyOf(facts),
});

/** What happened, day by day, as far as it is recorded. */
const chronologyOf = (facts: NoticePaper): AuthorityReportView['chronology'] => {
  const { duty, state } = facts;
  const mailed = state.addressees.flatMap(({ letters }) => letters.map(({ day }) => day)).sort();
  const events = [
    ...duty.arguable.map(({ on, what }) => ({ day: on, what })),
    ...duty.decisions.map(({ decision, discoveredOn, decidedBy }) => ({
      day: discoveredOn,
      what: `discovered, as ${decidedBy} decided about the duty to notify: ${decision}`,
    })),
    ...(mailed.length === 0
      ? []
      : [{ day: mailed[0] ?? '', what: `the first of ${mailed.length} letters was mailed` }]),
    ...state.reports.map(({ what, sentOn }) => ({ day: sentOn, what: `${what} report sent` })),
    ...datesOf(duty, state).flatMap(({ what, dueOn }) => (dueOn === null ? [] : [{ day: dueOn, what: `${what} due` }])),
  ];
  return events.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
};
