import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const version = spawnSync('qpdf', ['--version'], { encoding: 'utf8' });

/** Which qpdf checks papers beside the PDF reader, in words for the name of a test. */
export const CHECKED_BY =
  version.status === 0
    ? `qpdf ${/[\d.]+/.exec(version.stdout)?.[0] ?? ''} and the PDF reader`
    : 'the PDF reader alone: qpdf was not found';

/** What `qpdf --check` says against a PDF: nothing when it is sound, and nothing when qpdf was not found. */
export const qpdfFaults = (bytes: Buffer): readonly string[] => {
  if (version.status !== 0) return [];
  const folder = mkdtempSync(join(tmpdir(), 'paper-'));
  try {
    const file = join(folder, 'paper.pdf');
    writeFileSync(file, bytes);
    const { status, stdout, stderr } = spawnSync('qpdf', ['--check', file], { encoding: 'utf8' });
    return status === 0 ? [] : [`${stdout}\n${stderr}`.replaceAll(file, 'the paper')];
  } finally {
    rmSync(folder, { recursive: true });
  }
};
