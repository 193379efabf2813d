import { cp, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { WEB_DIR } from '../browser.js';

/** A copy of the built web app that a service serves, and a newer version of it may be put in its place. */
export interface Deployed {
  readonly webDir: string;
  /**
   * Puts another version there, as a deploy does: its page says `words` in its title, and one file that it names after
   * its content has another name, while that of the version before is gone.
   */
  readonly deploy: (words: string, changed: RegExp) => Promise<void>;
  readonly close: () => Promise<void>;
}

export const deployWeb = async (): Promise<Deployed> => {
  const webDir = await mkdtemp(join(tmpdir(), 'hull-record-deployed-'));
  const dist = join(webDir, 'dist');
  await cp(join(WEB_DIR, 'dist'), dist, { recursive: true });
  return {
    webDir,
    deploy: async (words, changed) => {
      const assets = await readdir(join(dist, 'assets'));
      const old = assets.find((name) => changed.test(name));
      if (old === undefined) throw new Error(`No file is named like ${changed.source}.`);
      const renamed = old.replace(/-[\w-]{8}\./, '-DEPLOYED.');
      await rename(join(dist, 'assets', old), join(dist, 'assets', renamed));
      const texts = [...(await readdir(join(dist, 'assets'))).map((name) => `assets/${name}`), 'service-worker.js'];
      for (const name of texts.filter((each) => each.endsWith('.js')))
        await rewrite(join(dist, name), (text) => text.replaceAll(old, renamed));
      await rewrite(join(dist, 'service-worker.js'), (text) => text.replace(/shell-[0-9a-f]{16}/, 'shell-deployed'));
      await rewrite(join(dist, 'index.html'), (text) =>
        text.replace('<head>', `<head><meta name="deployed" content="${words}">`),
      );
    },
    close: () => rm(webDir, { recursive: true }),
  };
};

const rewrite = async (file: string, change: (text: string) => string): Promise<void> => {
  const before = await readFile(file, 'utf8');
  const after = change(before);
  if (after !== before) await writeFile(file, after);
};
