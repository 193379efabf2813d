import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { fileURLToPath } from 'node:url';

const SRC = fileURLToPath(new URL('../../../apps/web/src', import.meta.url));

/** The sources of the web app, parsed; texts of catalogues and probes left out. */
export const webSources = (): readonly ts.SourceFile[] =>
  readdirSync(SRC, { recursive: true, encoding: 'utf8' })
    .filter((name) => /\.tsx?$/.test(name) && !/\.(en|es|probe)\.ts$/.test(name))
    .map((name) => ts.createSourceFile(name, readFileSync(`${SRC}/${name}`, 'utf8'), ts.ScriptTarget.Latest, true));

/** Every node below one, itself first. */
export const nodesBelow = (node: ts.Node): readonly ts.Node[] => {
  const below: ts.Node[] = [];
  node.forEachChild((child) => void below.push(...nodesBelow(child)));
  return [node, ...below];
};
