import { ComposedLotEntity, LotCompositionEntity, PlaceRoleEntity, PlaceSourceEntity } from '../composition/tables.js';
import { ExposureEntity, PartNumberEntity, StaleExposureEntity } from '../exposure/tables.js';
import { HullBlockEntity, HullPlaceEntity, StaleHullEntity } from '../roll/tables.js';
import { ClientIdEntity } from '../facts/client-id.entity.js';
import { CorrectionEntity } from '../facts/correction.entity.js';
import { JournalEntity } from '../facts/journal.entity.js';
import {
  HeadSentEntity,
  SealedEntryEntity,
  SealedSubtreeEntity,
  SealStateEntity,
  TreeHeadEntity,
} from '../journal/sealed.entities.js';
import { NonconformityEntity } from '../facts/nonconformity.entity.js';
import { PlantEntity } from '../facts/plant.entity.js';
import { LifeFactEntity } from '../life/life-fact.entity.js';
import { LotCandidateEntity } from '../lots/lot-candidate.entity.js';
import { LotInputEntity } from '../lots/lot-input.entity.js';
import { LotEntity } from '../lots/lot.entity.js';
import { UsedEntity } from '../used/used.entity.js';
import {
  CertificateCodeEntity,
  CertificateEntity,
  CertificateFileEntity,
  CertificateWithdrawnEntity,
} from '../../records/certificates/certificate.entities.js';
import { DealerEntity } from '../../dealers/dealer.entity.js';
import { DefectEntity } from '../defects/defect.entity.js';
import { PhotoEntity } from '../../defects/photo.entity.js';
import { DispositionEntity } from '../../dispositions/disposition.entity.js';
import { EquipmentEntity } from '../../equipment/equipment.entity.js';
import { EquipmentCheckEntity } from '../../equipment/equipment-check.entity.js';
import { GunSettingEntity } from '../../guns/gun-setting.entity.js';
import { HookUpEntity } from '../../guns/hook-up.entity.js';
import { TankEmptiedEntity } from '../../tanks/tank-emptied.entity.js';
import { HullNumberEntity } from '../../hulls/hull-number.entity.js';
import { HullEntity } from '../../hulls/hull.entity.js';
import { JointEntity } from '../../hulls/joint.entity.js';
import { PartEntity } from '../../hulls/part.entity.js';
import { LayerRecordEntity } from '../../layers/layer-record.entity.js';
import { SignatureEntity } from '../../layers/signature.entity.js';
import { LotPhotoEntity } from '../../lots/lot-photo.entity.js';
import { LotStateEntity } from '../../lots/lot-state.entity.js';
import { MaterialEntity } from '../../materials/material.entity.js';
import { ModelEntity } from '../../models/model.entity.js';
import { MoldEntity } from '../../models/mold.entity.js';
import { ScheduleLayerEntity } from '../../models/schedule-layer.entity.js';
import { RecomputationEntity, StaleLotEntity, StalePlaceEntity } from '../recompute/recomputation.entity.js';
import { ScheduleEntity } from '../../models/schedule.entity.js';
import { DeviceEntity } from '../../people/device.entity.js';
import { PersonDetailEntity } from '../../people/person-detail.entity.js';
import { PersonRoleEntity } from '../../people/person-role.entity.js';
import { PersonEntity } from '../../people/person.entity.js';
import { ReadingEntity } from '../../readings/reading.entity.js';
import { AcceptanceEntity } from '../../repairs/acceptance.entity.js';
import { RepairDefectEntity } from '../../repairs/repair-defect.entity.js';
import { RepairPhotoEntity } from '../../repairs/repair-photo.entity.js';
import { RepairEntity } from '../../repairs/repair.entity.js';
import { ContainerEntity, ContainerFactEntity } from '../../store/container.entity.js';
import { HoldEntity, HoldLiftEntity } from '../store/hold.entity.js';
import { HoldDispositionEntity, HoldReachedEntity, HoldScopeEntity } from '../holds/hold-facts.entity.js';
import { LotCountEntity, LotLossEntity, LotRetestEntity } from '../../store/lot-facts.entity.js';
import { AskAnswerEntity } from '../../defects/ask-answer.entity.js';
import { PartScrappedEntity } from '../../hulls/part-scrapped.entity.js';
import { ReInspectionEntity } from '../../repairs/re-inspection.entity.js';
import { TouchUpAcceptanceEntity } from '../../touch-ups/touch-up-acceptance.entity.js';
import { TouchUpLimitEntity } from '../../touch-ups/touch-up-limit.entity.js';
import { TouchUpEntity } from '../../touch-ups/touch-up.entity.js';
import { ReworkEntity } from '../../dispositions/rework.entity.js';
import { GoOnEntity } from '../../go-ons/go-on.entity.js';
import { FittedItemEntity, ItemRemovedEntity } from '../../fitted-items/fitted-item.entity.js';
import {
  LegalHoldEndedEntity,
  LegalHoldEntity,
  OwnerChangedEntity,
  OwnerDetailEntity,
  OwnerEntity,
  OwnerErasedEntity,
  OwnerRequestEntity,
} from '../../owners/owner.entity.js';
import {
  CaseAnswerEntity,
  CaseFileEntity,
  CaseLookEntity,
  CaseRunEntity,
  CaseSettingsEntity,
} from '../../cases/case.entity.js';
import { ClaimDecisionEntity, ClaimEntity, ClaimMarkEntity, ClaimPhotoEntity } from '../../claims/claim.entity.js';
import { WarrantyTermsEntity } from '../../warranty/warranty-terms.entity.js';
import { PartScheduleEntity } from '../../layers/part-schedule.entity.js';
import { ChartLimitsEntity } from '../../charts/chart-limits.entity.js';
import { MoldCareEntity } from '../../molds/mold-care.entity.js';
import { ClimatePointEntity } from '../../climate/climate-point.entity.js';
import { DataSheetEntity } from '../../materials/data-sheet.entity.js';
import { FlawLimitsEntity } from '../../flaw-limits/flaw-limits.entity.js';
import { PlantRulesEntity } from '../../plant-rules/plant-rules.entity.js';
import { VerdictEntity } from '../verdicts/verdict.entity.js';
import {
  ApiTokenEntity,
  CredentialEntity,
  FirstCodeEntity,
  OpenIdLinkEntity,
  OpenIdTryEntity,
  SessionEntity,
  SignInFailureEntity,
} from '../access/work.entities.js';
import { DeviceCredentialEntity, EnrolmentCodeEntity, KeptEntryEntity } from '../access/device.entities.js';
import { EntryConfirmationEntity, UnprovedEntryEntity } from '../facts/unproved-entry.entity.js';
import { DeviceRevokedEntity } from '../../devices/device-revoked.entity.js';
import { EntryDecisionEntity } from '../../kept-entries/entry-decision.entity.js';
import { RoleEndEntity } from '../../people/role-end.entity.js';
import {
  DutyDecisionEntity,
  MailingReturnedEntity,
  NoticeEntity,
  NoticeMailingEntity,
  NoticeReportEntity,
} from '../../notices/notice.entity.js';
import { DealerAcknowledgedEntity } from '../../own-hulls/acknowledged.entity.js';
import { FreeTextEntity } from '../texts/free-text.entity.js';
import { PhotoRedactedEntity, TextRedactedEntity } from '../texts/redaction.entities.js';
import { TankEntity } from '../../tanks/tank.entity.js';

/** Every table, named one by one: the one place of the platform that knows the features' tables. */
export const TABLES = [
  ...[ClientIdEntity, JournalEntity, CorrectionEntity, NonconformityEntity, PlantEntity],
  ...[SealedEntryEntity, SealedSubtreeEntity, TreeHeadEntity, SealStateEntity, HeadSentEntity],
  ...[CertificateEntity, CertificateFileEntity, CertificateWithdrawnEntity, CertificateCodeEntity],
  ...[PersonEntity, PersonRoleEntity, PersonDetailEntity, DeviceEntity, EquipmentEntity, DealerEntity],
  ...[RoleEndEntity, DeviceRevokedEntity, UnprovedEntryEntity, EntryConfirmationEntity, EntryDecisionEntity],
  ...[CredentialEntity, FirstCodeEntity, SessionEntity, SignInFailureEntity, OpenIdLinkEntity, ApiTokenEntity],
  OpenIdTryEntity,
  ...[EnrolmentCodeEntity, DeviceCredentialEntity, KeptEntryEntity],
  ...[MaterialEntity, TankEntity, LotEntity, LotInputEntity, LotStateEntity, LotPhotoEntity, LotCandidateEntity],
  ...[EquipmentCheckEntity, GunSettingEntity, HookUpEntity, TankEmptiedEntity],
  ...[ContainerEntity, ContainerFactEntity, HoldEntity, HoldLiftEntity, LotLossEntity, LotCountEntity, LotRetestEntity],
  ...[
    TouchUpEntity,
    TouchUpAcceptanceEntity,
    TouchUpLimitEntity,
    ReInspectionEntity,
    AskAnswerEntity,
    PartScrappedEntity,
  ],
  ...[DutyDecisionEntity, NoticeEntity, NoticeMailingEntity, MailingReturnedEntity, NoticeReportEntity],
  ...[HoldScopeEntity, HoldReachedEntity, HoldDispositionEntity],
  ...[GoOnEntity, ReworkEntity],
  ...[FittedItemEntity, ItemRemovedEntity, OwnerEntity, OwnerErasedEntity, OwnerDetailEntity],
  DealerAcknowledgedEntity,
  ...[FreeTextEntity, TextRedactedEntity, PhotoRedactedEntity],
  ...[OwnerChangedEntity, OwnerRequestEntity, LegalHoldEntity, LegalHoldEndedEntity],
  ...[CaseFileEntity, CaseSettingsEntity, CaseLookEntity, CaseAnswerEntity, CaseRunEntity],
  ...[WarrantyTermsEntity, ClaimEntity, ClaimPhotoEntity, ClaimDecisionEntity, ClaimMarkEntity],
  ...[MoldCareEntity, PartScheduleEntity],
  ...[ModelEntity, ScheduleEntity, ScheduleLayerEntity, MoldEntity],
  ...[HullEntity, HullNumberEntity, PartEntity, JointEntity, LifeFactEntity],
  ...[LayerRecordEntity, UsedEntity, ReadingEntity, SignatureEntity],
  ...[DefectEntity, PhotoEntity, RepairEntity, RepairDefectEntity, RepairPhotoEntity],
  ...[AcceptanceEntity, DispositionEntity],
  ...[LotCompositionEntity, ComposedLotEntity, PlaceSourceEntity, PlaceRoleEntity],
  ...[PartNumberEntity, ExposureEntity, StaleExposureEntity],
  ...[HullPlaceEntity, HullBlockEntity, StaleHullEntity],
  ClimatePointEntity,
  ...[VerdictEntity, DataSheetEntity, PlantRulesEntity, FlawLimitsEntity, ChartLimitsEntity],
  ...[RecomputationEntity, StaleLotEntity, StalePlaceEntity],
] as const;
