import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** A file that breaks one rule of .dependency-cruiser.cjs, and no other. */
export interface Probe {
  readonly rule: string;
  /** Path from the top of the project; ends in `.probe.ts`, which neither git nor the compiler looks at. */
  readonly path: string;
  readonly text: string;
}

const TRADE = "import { units } from '@hull-record/trade';\nexport const it = units;\n";
const from = (what: string): string => `import it from '${what}';\nexport { it };\n`;

/** At least one probe for each rule, and one for each way round it that was thought of. */
export const PROBES: readonly Probe[] = [
  { rule: 'pure-libs-import-nothing', path: 'libs/genealogy/src/lib.probe.ts', text: TRADE },
  {
    rule: 'pure-libs-import-nothing',
    path: 'libs/evidence/src/type.probe.ts',
    text: TRADE.replace('{ units', '{ type Units'),
  },
  { rule: 'pure-libs-import-nothing', path: 'libs/statistics/src/lib.probe.ts', text: TRADE },
  { rule: 'pure-libs-import-nothing', path: 'libs/evidence/src/path.probe.ts', text: from('../../trade/src/index.js') },
  { rule: 'pure-libs-no-frameworks', path: 'libs/trade/src/nest.probe.ts', text: from('@nestjs/common') },
  { rule: 'pure-libs-no-frameworks', path: 'libs/trade/src/typeorm.probe.ts', text: from('typeorm') },
  { rule: 'pure-libs-no-frameworks', path: 'libs/genealogy/src/pg.probe.ts', text: from('pg') },
  { rule: 'pure-libs-no-frameworks', path: 'libs/trade/src/zod.probe.ts', text: "export const it = import('zod');\n" },
  { rule: 'pure-libs-no-frameworks', path: 'libs/statistics/src/zod.probe.ts', text: from('zod') },
  { rule: 'pure-libs-no-input-or-output', path: 'libs/trade/src/fs.probe.ts', text: from('node:fs/promises') },
  { rule: 'pure-libs-no-input-or-output', path: 'libs/evidence/src/net.probe.ts', text: from('net') },
  {
    rule: 'contracts-import-trade-only',
    path: 'libs/contracts/src/other.probe.ts',
    text: from('@hull-record/genealogy'),
  },
  { rule: 'paper-imports-trade-only', path: 'libs/paper/src/other.probe.ts', text: from('@hull-record/contracts') },
  {
    rule: 'web-imports-contracts-and-pure-libs',
    path: 'apps/web/src/paper.probe.ts',
    text: from('@hull-record/paper'),
  },
  {
    rule: 'web-imports-contracts-and-pure-libs',
    path: 'apps/web/src/service.probe.ts',
    text: from('../../service/src/platform/ids.js'),
  },
  { rule: 'component-kit-behind-ui', path: 'apps/web/src/hulls/kit.probe.ts', text: from('react-aria-components') },
  { rule: 'component-kit-behind-ui', path: 'apps/web/src/record/hooks.probe.ts', text: from('react-aria/useButton') },
  {
    rule: 'pages-do-not-import-pages',
    path: 'apps/web/src/lots/page.probe.ts',
    text: from('../hulls/reference.js'),
  },
  {
    rule: 'libs-import-no-app',
    path: 'libs/any-other/src/app.probe.ts',
    text: from('../../../apps/service/src/platform/ids.js'),
  },
  {
    rule: 'service-imports-no-other-app',
    path: 'apps/service/src/platform/web.probe.ts',
    text: "export * from '../../../web/src/any.probe.js';\n",
  },
  {
    rule: 'product-imports-no-test',
    path: 'apps/service/src/trace/test.probe.ts',
    text: from('../../../../tests/support/shop.js'),
  },
  {
    rule: 'features-do-not-import-features',
    path: 'apps/service/src/layers/feature.probe.ts',
    text: from('../lots/receive-lot.js'),
  },
  {
    rule: 'platform-imports-no-feature',
    path: 'apps/service/src/platform/lots/feature.probe.ts',
    text: from('../../lots/receive-lot.js'),
  },
  { rule: 'walk-is-independent', path: 'tests/support/walk/borrow.probe.ts', text: from('@hull-record/genealogy') },
  { rule: 'no-cycles', path: 'libs/trade/src/one.probe.ts', text: "export * from './two.probe.js';\n" },
  { rule: 'every-import-resolves', path: 'libs/trade/src/nowhere.probe.ts', text: from('@hull-record/nowhere') },
  { rule: 'every-import-resolves', path: 'apps/web/src/nowhere.probe.ts', text: from('/lib/trade/index.js') },
];

/** Files that probes lead to, and that break no rule of their own. */
const TARGETS: Readonly<Record<string, string>> = {
  'apps/web/src/any.probe.ts': 'export const nothing = 0;\n',
  'libs/trade/src/two.probe.ts': "export * from './one.probe.js';\n",
};

/** Folders that exist only for a probe. */
const FOLDERS = ['libs/any-other'];

/** Writes all probes into the tree. */
export const writeProbes = (): void => {
  const texts = [...PROBES.map(({ path, text }) => [path, text] as const), ...Object.entries(TARGETS)];
  for (const [path, text] of texts) {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(path, text);
  }
};

/** Removes every probe from the tree, also those of a run that was killed. */
export const removeProbes = (): void => {
  for (const top of ['apps', 'libs', 'tests'].filter((folder) => existsSync(folder))) {
    for (const entry of readdirSync(top, { recursive: true, encoding: 'utf8' })) {
      if (entry.endsWith('.probe.ts') && !entry.includes('node_modules')) rmSync(`${top}/${entry}`, { force: true });
    }
  }
  for (const folder of FOLDERS) rmSync(folder, { recursive: true, force: true });
};
