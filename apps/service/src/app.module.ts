import { type DynamicModule, Global, Module } from '@nestjs/common';
import { APP_FILTER, APP_GUARD, APP_INTERCEPTOR, APP_PIPE } from '@nestjs/core';
import { join } from 'node:path';
import { DataSource } from 'typeorm';
import { CorrectionsModule } from './corrections/corrections.module.js';
import { DaySheetModule } from './day-sheet/day-sheet.module.js';
import { DealersModule } from './dealers/dealers.module.js';
import { DefectsModule } from './defects/defects.module.js';
import { DemoModule } from './demo/demo.module.js';
import { DispositionsModule } from './dispositions/dispositions.module.js';
import { EquipmentModule } from './equipment/equipment.module.js';
import { HealthModule } from './health/health.module.js';
import { HullMapModule } from './hull-map/hull-map.module.js';
import { NoticesModule } from './notices/notices.module.js';
import { HoldsModule } from './holds/holds.module.js';
import { HullsModule } from './hulls/hulls.module.js';
import { LabelsModule } from './labels/labels.module.js';
import { LayersModule } from './layers/layers.module.js';
import { LifeModule } from './life/life.module.js';
import { LotsModule } from './lots/lots.module.js';
import { MaterialsModule } from './materials/materials.module.js';
import { ModelsModule } from './models/models.module.js';
import { PartsModule } from './parts/parts.module.js';
import { PeopleModule } from './people/people.module.js';
import { AtOnce } from './platform/composition/at-once.js';
import { Composition } from './platform/composition/composition.js';
import { Amendments } from './platform/facts/amendments.js';
import { RecordFact } from './platform/facts/record-fact.js';
import { JournalTimer } from './platform/journal/journal-timer.js';
import { KeyRing } from './platform/journal/key-ring.js';
import { SealJournal } from './platform/journal/seal-journal.js';
import { type HeadWay, SendHeads } from './platform/journal/send-heads.js';
import { SignHead } from './platform/journal/sign-head.js';
import { FinishRecomputation } from './platform/recompute/finish-recomputation.js';
import { Jobs } from './platform/recompute/jobs.js';
import { RecomputePlant } from './platform/recompute/recompute-plant.js';
import { RecomputeWorker } from './platform/recompute/worker.js';
import { DemoProgress } from './platform/demo-progress.js';
import { ProblemFilter } from './platform/http/problem.filter.js';
import { ReceiptStatus } from './platform/http/receipt-status.js';
import { validation } from './platform/http/validation.js';
import { PhotoStore } from './platform/photos/photo-store.js';
import { PrintCopies } from './platform/photos/print-copies.js';
import { ReadingsModule } from './readings/readings.module.js';
import { DropsModule } from './drops/drops.module.js';
import { GunsModule } from './guns/guns.module.js';
import { RecomputationsModule } from './recomputations/recomputations.module.js';
import { PapersModule } from './records/papers/papers.module.js';
import { CertificatesModule } from './records/certificates/certificates.module.js';
import { CertificatePage } from './records/certificates/draw.js';
import { type OwnSigner, SigningKey } from './records/certificates/signing-key.js';
import { RecordsModule } from './records/records.module.js';
import { RepairsModule } from './repairs/repairs.module.js';
import { StoreModule } from './store/store.module.js';
import { TanksModule } from './tanks/tanks.module.js';
import { TouchUpsModule } from './touch-ups/touch-ups.module.js';
import { GoOnsModule } from './go-ons/go-ons.module.js';
import { NonconformitiesModule } from './nonconformities/nonconformities.module.js';
import { QualityModule } from './quality/quality.module.js';
import { Rehearse } from './platform/facts/rehearse.js';
import { FittedItemsModule } from './fitted-items/fitted-items.module.js';
import { RedactionsModule } from './redactions/redactions.module.js';
import { OwnersModule } from './owners/owners.module.js';
import { CasesModule } from './cases/cases.module.js';
import { ChartsModule } from './charts/charts.module.js';
import { ClaimsModule } from './claims/claims.module.js';
import { WarrantyModule } from './warranty/warranty.module.js';
import { ClimateModule } from './climate/climate.module.js';
import { FiguresModule } from './figures/figures.module.js';
import { FlawLimitsModule } from './flaw-limits/flaw-limits.module.js';
import { PlantRulesModule } from './plant-rules/plant-rules.module.js';
import { MoldsModule } from './molds/molds.module.js';
import { DevicesModule } from './devices/devices.module.js';
import { KeptEntriesModule } from './kept-entries/kept-entries.module.js';
import { OwnHullsModule } from './own-hulls/own-hulls.module.js';
import { Admissions } from './platform/access/admissions.js';
import { Authorise } from './platform/access/authorise.guard.js';
import { Cookies } from './platform/access/cookies.js';
import { KeepEntry } from './platform/access/keep-entry.js';
import { ReadCaller } from './platform/access/read-caller.js';
import { AccessSettings } from './platform/access/settings.js';
import { SignInModule } from './sign-in/sign-in.module.js';
import { TokensModule } from './tokens/tokens.module.js';
import { UnprovedEntriesModule } from './unproved-entries/unproved-entries.module.js';
import { VerifyModule } from './verify/verify.module.js';
import { TraceModule } from './trace/trace.module.js';

const FEATURES = [
  QualityModule,
  ...[
    GunsModule,
    DropsModule,
    StoreModule,
    HoldsModule,
    NoticesModule,
    TouchUpsModule,
    GoOnsModule,
    NonconformitiesModule,
  ],
  ...[SignInModule, DevicesModule, TokensModule, UnprovedEntriesModule, KeptEntriesModule, OwnHullsModule],
  ...[
    ClimateModule,
    PlantRulesModule,
    FiguresModule,
    FlawLimitsModule,
    OwnersModule,
    RedactionsModule,
    FittedItemsModule,
    MoldsModule,
  ],
  ...[ClaimsModule, WarrantyModule, CasesModule, ChartsModule],
  ...[PeopleModule, EquipmentModule, DealersModule, MaterialsModule, TanksModule, LotsModule, ModelsModule],
  ...[
    HullsModule,
    LifeModule,
    LayersModule,
    ReadingsModule,
    DaySheetModule,
    DefectsModule,
    DispositionsModule,
    RepairsModule,
    CorrectionsModule,
  ],
  ...[
    RecomputationsModule,
    PartsModule,
    TraceModule,
    HullMapModule,
    RecordsModule,
    PapersModule,
    CertificatesModule,
    VerifyModule,
    LabelsModule,
    HealthModule,
    DemoModule,
  ],
];

const EDGE = [
  { provide: APP_GUARD, useClass: Authorise },
  { provide: APP_PIPE, useFactory: validation },
  { provide: APP_FILTER, useClass: ProblemFilter },
  { provide: APP_INTERCEPTOR, useClass: ReceiptStatus },
];

/** What a running service is given: its database, and a folder for files. */
export interface Given {
  readonly db: DataSource;
  readonly dataDir: string;
  /** How much a correction works out before it answers. */
  readonly atOnce?: AtOnce;
  /** Where the keys of the journal lie; by default beside its files. */
  readonly keysDir?: string;
  /** The key that signs certificates, in place of the one that is made. */
  readonly ownSigner?: OwnSigner | null;
  /** Address under which browsers reach it; certificates say it. */
  readonly address?: string;
  /** Where signed heads of the journal are sent. */
  readonly headWays?: readonly HeadWay[];
  /** How people reach it, and sign in. */
  readonly access?: AccessSettings;
}

/** The service: the platform below, and every feature on it. */
@Global()
@Module({})
export class AppModule {
  static for(given: Given): DynamicModule {
    const { db, dataDir, atOnce = new AtOnce(), access = new AccessSettings(), headWays = [] } = given;
    const keysDir = given.keysDir ?? join(dataDir, 'keys');
    const photos = new PhotoStore(join(dataDir, 'photos'));
    const platform = [
      { provide: DataSource, useValue: db },
      { provide: PhotoStore, useValue: photos },
      { provide: PrintCopies, useValue: new PrintCopies(photos, join(dataDir, 'print-copies')) },
      { provide: AtOnce, useValue: atOnce },
      { provide: KeyRing, useValue: new KeyRing(keysDir) },
      { provide: SigningKey, useValue: new SigningKey(keysDir, given.ownSigner ?? null) },
      { provide: CertificatePage, useValue: new CertificatePage(given.address ?? 'http://localhost') },
      { provide: SendHeads, useValue: new SendHeads(db, headWays) },
      ...[SealJournal, SignHead, JournalTimer],
      { provide: AccessSettings, useValue: access },
      { provide: Cookies, useValue: new Cookies(access.secure) },
      ...[ReadCaller, KeepEntry, Admissions],
      ...[RecordFact, Rehearse, Composition, Amendments, DemoProgress],
      ...[FinishRecomputation, RecomputePlant, RecomputeWorker, Jobs],
    ];
    return {
      module: AppModule,
      imports: FEATURES,
      providers: [...platform, ...EDGE],
      exports: [
        AccessSettings,
        Admissions,
        Cookies,
        ReadCaller,
        DataSource,
        PhotoStore,
        PrintCopies,
        RecordFact,
        Rehearse,
        Amendments,
        Jobs,
        Composition,
        DemoProgress,
        SealJournal,
        SignHead,
        KeyRing,
        SigningKey,
        CertificatePage,
      ],
    };
  }
}
