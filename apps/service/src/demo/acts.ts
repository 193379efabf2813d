import type { Type } from '@nestjs/common';
import { routes } from '@hull-record/contracts';
import type { z } from 'zod';
import { Correct } from '../corrections/correct.js';
import { RegisterDealer } from '../dealers/register-dealer.js';
import { AddPhoto } from '../defects/add-photo.js';
import { ReportDefect } from '../defects/report-defect.js';
import { Dispose } from '../dispositions/dispose.js';
import { FreezeCase } from '../cases/freeze-case.js';
import { OpenCase } from '../cases/open-case.js';
import { FileClaim } from '../claims/file-claim.js';
import { SetWarrantyTerms } from '../warranty/set-warranty-terms.js';
import { ImportClimate } from '../climate/import-climate.js';
import { CheckEquipment } from '../equipment/check-equipment.js';
import { HookUpGun } from '../guns/hook-up-gun.js';
import { SetGun } from '../guns/set-gun.js';
import { ScrapPart } from '../hulls/scrap-part.js';
import { CareForMold } from '../molds/care-for-mold.js';
import { RegisterOwner } from '../owners/register-owner.js';
import { JudgeTouchUp } from '../touch-ups/judge-touch-up.js';
import { RecordTouchUp } from '../touch-ups/record-touch-up.js';
import { RegisterEquipment } from '../equipment/register-equipment.js';
import { AssignHin } from '../hulls/assign-hin.js';
import { JoinPart } from '../hulls/join-part.js';
import { StartHull } from '../hulls/start-hull.js';
import { StartPart } from '../hulls/start-part.js';
import { RecordLayer } from '../layers/record-layer.js';
import { SignHoldPoint } from '../layers/sign-hold-point.js';
import { RecordLifeFact } from '../life/record-life-fact.js';
import { ReleaseHull } from '../life/release-hull.js';
import { ChangeLotState } from '../lots/change-lot-state.js';
import { CutKit } from '../lots/cut-kit.js';
import { MakeMix } from '../lots/make-mix.js';
import { ReceiveLot } from '../lots/receive-lot.js';
import { SetPlantRules } from '../plant-rules/set-plant-rules.js';
import { RegisterMaterial } from '../materials/register-material.js';
import { PublishSchedule } from '../models/publish-schedule.js';
import { RegisterModel } from '../models/register-model.js';
import { RegisterMold } from '../models/register-mold.js';
import { RegisterDevice } from '../people/register-device.js';
import { RegisterPerson } from '../people/register-person.js';
import type { Receipt } from '../platform/facts/record-fact.js';
import { wholly } from '../platform/http/validation.js';
import { TakeReadings } from '../readings/take-readings.js';
import { JudgeRepair } from '../repairs/judge-repair.js';
import { RecordRepair } from '../repairs/record-repair.js';
import { FillTank } from '../tanks/fill-tank.js';
import { RegisterTank } from '../tanks/register-tank.js';
import { seenOn } from './plan/photos.js';
import { inventedPhoto } from './drawings/invented-photo.js';
import type { ActName, Step } from './plan/step.js';

/** Finds a use case of the service. */
export type Find = <U>(useCase: Type<U>) => U;
type Act = (find: Find, step: Step) => Promise<Receipt<unknown>>;

interface Alone<B> {
  run(request: B): Promise<Receipt<unknown>>;
}
interface OfSomething<B> {
  run(of: string, request: B): Promise<Receipt<unknown>>;
}

/** The body goes through the contract first, and wholly, as at the edge of the service. */
const read = <S extends z.ZodType>({ body }: { readonly body: S }, step: Step): z.output<S> =>
  wholly(step.body, body.parse(step.body));

const alone =
  <S extends z.ZodType>(route: { readonly body: S }, useCase: Type<Alone<z.output<S>>>): Act =>
  (find, step) =>
    find(useCase).run(read(route, step));

const of =
  <S extends z.ZodType>(route: { readonly body: S }, useCase: Type<OfSomething<z.output<S>>>): Act =>
  (find, step) =>
    find(useCase).run(step.of ?? '', read(route, step));

/** Each act of the plan, by the use case that does it when the call comes over HTTP. */
export const ACTS: Readonly<Record<ActName, Act>> = {
  registerPerson: alone(routes.registerPerson, RegisterPerson),
  registerDevice: alone(routes.registerDevice, RegisterDevice),
  registerEquipment: alone(routes.registerEquipment, RegisterEquipment),
  registerDealer: alone(routes.registerDealer, RegisterDealer),
  registerMaterial: alone(routes.registerMaterial, RegisterMaterial),
  setPlantRules: alone(routes.setPlantRules, SetPlantRules),
  registerTank: alone(routes.registerTank, RegisterTank),
  registerModel: alone(routes.registerModel, RegisterModel),
  publishSchedule: of(routes.publishSchedule, PublishSchedule),
  registerMold: alone(routes.registerMold, RegisterMold),
  receiveLot: alone(routes.receiveLot, ReceiveLot),
  changeLotState: of(routes.changeLotState, ChangeLotState),
  fillTank: of(routes.fillTank, FillTank),
  makeMix: alone(routes.makeMix, MakeMix),
  cutKit: alone(routes.cutKit, CutKit),
  startHull: alone(routes.startHull, StartHull),
  startPart: alone(routes.startPart, StartPart),
  recordLayer: of(routes.recordLayer, RecordLayer),
  readLayer: (find, step) => find(TakeReadings).run('layer', step.of ?? '', read(routes.readLayer, step)),
  signHoldPoint: of(routes.signHoldPoint, SignHoldPoint),
  joinPart: of(routes.joinPart, JoinPart),
  assignHin: of(routes.assignHin, AssignHin),
  recordLifeFact: of(routes.recordLifeFact, RecordLifeFact),
  releaseHull: of(routes.releaseHull, ReleaseHull),
  setGun: of(routes.setGun, SetGun),
  hookUpGun: of(routes.hookUpGun, HookUpGun),
  checkEquipment: of(routes.checkEquipment, CheckEquipment),
  careForMold: of(routes.careForMold, CareForMold),
  importClimate: of(routes.importClimate, ImportClimate),
  recordTouchUp: of(routes.recordTouchUp, RecordTouchUp),
  judgeTouchUp: of(routes.judgeTouchUp, JudgeTouchUp),
  scrapPart: of(routes.scrapPart, ScrapPart),
  registerOwner: of(routes.registerOwner, RegisterOwner),
  setWarrantyTerms: of(routes.setWarrantyTerms, SetWarrantyTerms),
  fileClaim: of(routes.fileClaim, FileClaim),
  openCase: alone(routes.openCase, OpenCase),
  freezeCase: of(routes.freezeCase, FreezeCase),
  reportDefect: of(routes.reportDefect, ReportDefect),
  addPhoto: (find, step) =>
    find(AddPhoto).run(
      step.of ?? '',
      JSON.stringify(read(routes.addPhoto, step)),
      inventedPhoto(step.name, seenOn(step.name)),
    ),
  dispose: alone(routes.dispose, Dispose),
  recordRepair: of(routes.recordRepair, RecordRepair),
  judgeRepair: of(routes.judgeRepair, JudgeRepair),
  correct: alone(routes.correct, Correct),
};
