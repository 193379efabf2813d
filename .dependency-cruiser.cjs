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
      'A rule that needs a framework, a database or the file system is not a rule.',
      { path: '^libs/(trade|statistics|genealogy|evidence)/src' },
      {
        path: 'node_modules/(@nestjs|typeorm|pg|pdfkit|zod)|^(node:)?(fs|http|https|net|child_process|os|worker_threads)$',
      },
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
    rule('nothing-imports-an-app', 'Libraries are below apps.', { path: '^libs/' }, { path: '^apps/' }),
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
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    exclude: { path: '(^|/)dist/' },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: 'tsconfig.base.json' },
    enhancedResolveOptions: { exportsFields: ['exports'], conditionNames: ['source', 'import', 'node', 'default'] },
  },
};
