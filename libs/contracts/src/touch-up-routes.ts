import { JudgeRepair, AcceptanceReceipt } from './repairs.js';
import { post } from './route.js';
import * as touchUps from './touch-ups.js';

/** Touch-ups, re-inspections, what defects of cure ask, scrapped parts. */
export const touchUpRoutes = {
  recordTouchUp: post({
    path: '/api/parts/:part/touch-ups',
    tag: 'repairs',
    summary: 'Record many small cosmetic spots in one entry.',
    body: touchUps.RecordTouchUp,
    response: touchUps.TouchUpReceipt,
  }),
  judgeTouchUp: post({
    path: '/api/touch-ups/:touchUp/acceptances',
    tag: 'repairs',
    summary: 'Accept or refuse all spots of one entry; whoever does so did not do them.',
    body: JudgeRepair,
    response: AcceptanceReceipt,
  }),
  setTouchUpLimit: post({
    path: '/api/touch-up-limits',
    tag: 'repairs',
    summary: 'Set what may be touched up in this plant; more is a repair.',
    body: touchUps.SetTouchUpLimit,
    response: touchUps.TouchUpLimitReceipt,
  }),
  inspectRepairAgain: post({
    path: '/api/repairs/:repair/re-inspections',
    tag: 'repairs',
    summary: 'Inspect a repair again; when it fails, its defects are open again.',
    body: touchUps.InspectRepairAgain,
    response: touchUps.ReInspectionReceipt,
  }),
  answerAsk: post({
    path: '/api/defects/:defect/answers',
    tag: 'defects',
    summary: 'Say of which bucket or gun a defect of cure came.',
    body: touchUps.AnswerAsk,
    response: touchUps.AnswerReceipt,
  }),
  scrapPart: post({
    path: '/api/parts/:part/scrapping',
    tag: 'parts',
    summary: 'Scrap a part; it keeps its record.',
    body: touchUps.ScrapPart,
    response: touchUps.ScrapReceipt,
  }),
} as const;
