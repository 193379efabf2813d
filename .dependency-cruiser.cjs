/** Imports point one way. Each rule says why; tests/architecture/imports.test.ts proves that each one fires. */
const rule = (name, comment, from, to) => ({ name, comment, severity: 'error', from, to });

module.exports = {
  forbidden: [
    rule(
      'pure-libs-import-nothing',
      'trade, statistics, genealogy and evidence are the rules: plain functions that import nothing of the project.',
      { path: '^libs/(trade|statistics|genealogy|evidence)/src' },
      { path: '^(libs|apps)/', pathNot: '^libs/$1/src' },
    ),
    rule(
      'pure-libs-no-frameworks',
      'A rule that needs a framework or a database is not a rule. Canonical JSON and special functions are mathematics.',
      { path: '^libs/(trade|statistics|genealogy|evidence)/src' },
      { path: '(^|/)node_modules/', pathNot: '(^|/)node_modules/(canonicalize|@stdlib)/' },
    ),
    rule(
      'pure-libs-no-input-or-output',
      'Files, network, clock and processes are given to a rule as arguments; a hash is only arithmetic.',
      { path: '^libs/(trade|statistics|genealogy|evidence)/src' },
      { dependencyTypes: ['core'], pathNot: '^(node:)?crypto$' },
    ),
    rule(
      'contracts-import-trade-only',
      'The wire format is shared by service and web; it may not drag either in.',
      { path: '^libs/contracts/src' },
      { path: '^(libs|apps)/', pathNot: '^libs/(contracts|trade)/src' },
    ),
    rule(
      'paper-imports-trade-only',
      'A document is drawn from a finished view; it decides nothing and asks nobody.',
      { path: '^libs/paper/src' },
      { path: '^(libs|apps)/', pathNot: '^libs/(paper|trade)/src' },
    ),
    rule(
      'web-imports-contracts-and-pure-libs',
      'The web app speaks to the service over HTTP alone.',
      { path: '^apps/web/src' },
      { path: '^(libs|apps)/', pathNot: '^(apps/web/|libs/(contracts|trade|statistics|genealogy)/src)' },
    ),
    rule(
      'component-kit-behind-ui',
      'One folder knows the component kit, so that another kit, or none, is the change of one folder.',
      { path: '^apps/web/src/', pathNot: '^apps/web/src/ui/' },
      { path: '(^|node_modules/)@?(react-aria|react-stately|react-types|internationalized)' },
    ),
    rule(
      'pages-do-not-import-pages',
      'A folder of pages stands alone; what several show is in record/, and only the routes in app/ name them all.',
      {
        path: '^apps/web/src/(bay|home|certificate-check|hulls|map|traces|lots|defects|search|settings|sign-in|labels|station|store|quality|people|equipment|holds|notices|claims|warranty|cases)/',
      },
      {
        path: '^apps/web/src/(app|bay|home|certificate-check|hulls|map|traces|lots|defects|search|settings|sign-in|labels|station|store|quality|people|equipment|holds|notices|claims|warranty|cases)/',
        pathNot: '^apps/web/src/$1/',
      },
    ),
    rule('libs-import-no-app', 'Libraries are below apps.', { path: '^libs/' }, { path: '^apps/' }),
    rule(
      'service-imports-no-other-app',
      'What two apps share is a library.',
      { path: '^apps/service/' },
      { path: '^apps/', pathNot: '^apps/service/' },
    ),
    rule(
      'product-imports-no-test',
      'What is shipped does not stand on what checks it.',
      { path: '^(libs|apps)/' },
      { path: '^tests/' },
    ),
    rule(
      'features-do-not-import-features',
      'Features meet in SQL reads, in the database or in an event. Only the module list and the platform stand above them.',
      { path: '^apps/service/src/([^/]+)/', pathNot: '^apps/service/src/(platform|demo)/' },
      { path: '^apps/service/src/([^/]+)/', pathNot: '^apps/service/src/($1|platform)/' },
    ),
    rule(
      'platform-imports-no-feature',
      'The platform is below features. The list of tables is the one place that names them all.',
      { path: '^apps/service/src/platform/', pathNot: '^apps/service/src/platform/database/tables\\.ts$' },
      { path: '^apps/service/src/(?!platform/)[^/]+/' },
    ),
    rule(
      'walk-is-independent',
      'The brute-force walk checks the service; it may not borrow from what it checks.',
      { path: '^tests/support/walk' },
      { path: '^(libs|apps)/' },
    ),
    rule('no-cycles', 'Two files that need each other are one file, or three.', {}, { circular: true }),
    rule(
      'every-import-resolves',
      'An import that this tool cannot follow escapes every other rule. The component kit names sources that it does not ship; `?url` is a word to the bundler.',
      {},
      { couldNotResolve: true, pathNot: '^react-(aria|stately)(-components)?(/|$)|^zxing-wasm/.+\\.wasm\\?url$' },
    ),
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '^(apps|libs)/[^/]+/dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['source', 'import', 'node', 'default'] },
  },
};
