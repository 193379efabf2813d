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
  title: titleOf(facts),
  counts: countsOf(facts, recipients),
  letters: recipients.flatMap(({ name, address, kind, hulls }) =>
    name === null || address === null
      ? []
      : [
          {
            to: [name, ...linesOf(address)],
            as: kind,
            boats: facts.state.noticed
              .filter(({ hull }) => hulls.includes(hull))
              .map(({ hull, hin, modelName }) => ({ hull, hin, model: modelName })),
          },
        ],
  ),
});

/** The lines of an address as they were entered; one that was entered in a line is broken at its commas. */
const linesOf = (address: string): readonly string[] =>
  address
    .split(/[\r\n]/.test(address) ? /[\r\n]+/ : /, +/)
    .map((line) => line.trim())
    .filter((line) => line !== '');

/** What 46 USC 4310(b) knows: a defect with a substantial risk of injury, and a failure to meet a regulation. */
const titleOf = ({ duty }: NoticePaper): string =>
  duty.decisions.at(-1)?.decision === 'fails a rule'
    ? 'Notice that a boat does not comply with a regulation'
    : 'Notice of a defect that may cause injury';

/** How many letters there are of each kind, and who cannot be written to: the law asks for reasonable diligence. */
const countsOf = (facts: NoticePaper, recipients: readonly Recipient[]): LettersView['counts'] => {
  const written = (kind: Recipient['kind']): string => {
    const all = recipients.filter((each) => each.kind === kind);
    const known = all.filter(({ name, address }) => name !== null && address !== null).length;
    return `${known} ${known === 1 ? 'letter' : 'letters'}${known === all.length ? '' : `; ${all.length - known} without an address, and so without a letter`}`;
  };
  const told = new Set(recipients.filter(({ kind }) => kind === 'first purchaser').flatMap(({ hulls }) => hulls));
  const untold = facts.state.noticed.flatMap(({ hull }) => (told.has(hull) ? [] : [hull]));
  return [
    ['Dealers', written('dealer')],
    ['First purchasers', written('first purchaser')],
    ['Later owners', written('later owner')],
    ['Not known', untold.length === 0 ? '' : `no first purchaser is on record of ${untold.join(', ')}`],
  ];
};

/** Words the draft of the initial report (33 CFR 179.13). */
export const wordInitialReport = (facts: NoticePaper): AuthorityReportView => ({
  ...base(facts),
  name: 'Initial report, draft',
  source: '33 CFR 179.13: concurrently with the notice, by certified mail',
  facts: [
    ['Affected', `${facts.state.figures.affected}, the best estimate of the total number potentially affected`],
    ['Of which', hullsWords(facts)],
    [
      'Contained',
      `${facts.state.contained.length} that ${facts.state.contained.length === 1 ? 'has' : 'have'} not left the place of manufacture, not counted`,
    ],
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
