import { describe, expect, it } from '@jest/globals';
import { readFileSync, writeFileSync } from 'node:fs';
import { ACTS, may, ROLES, routes, WHO_MAY, type Route, type RouteName } from '@hull-record/contracts';

const PAGE = 'apps/service/docs/who-may-do-what.md';

const HEAD = `# Who may do what

Made from the table in \`libs/contracts/src/access/who-may.ts\`; a test compares the two. After a change of the table:
\`WRITE_WHO_MAY=1 npm run jest -- --selectProjects architecture --testPathPatterns who-may\`. What the table does not name
is refused to everybody. People have as many roles as they have jobs.
`;

const TABLE = Object.entries(routes) as [RouteName, Route][];

const cell = (name: RouteName, role: (typeof ROLES)[number]): string => (may([role], name) ? 'x' : '');

/** A Markdown table without padding: the formatter leaves this page alone. */
const rowOf = (cells: readonly string[]): string => `| ${cells.join(' | ')} |`;

const page = (): string => {
  const tags = [...new Set(TABLE.map(([, { tag }]) => tag))].sort();
  const parts = tags.map((tag) => {
    const rows = TABLE.filter(([, route]) => route.tag === tag).map(([name, { method, path, summary }]) => {
      const who = WHO_MAY[name];
      const whole =
        typeof who === 'string'
          ? ROLES.map(() => (who === 'anyone' ? 'o' : 'x'))
          : ROLES.map((role) => cell(name, role));
      return rowOf([summary.replaceAll('|', '\\|'), `\`${method} ${path}\``, ...whole]);
    });
    return [
      `## ${tag}`,
      '',
      rowOf(['what', 'call', ...ROLES]),
      rowOf(['what', 'call', ...ROLES].map(() => '---')),
      ...rows,
    ].join('\n');
  });
  const acts = Object.entries(ACTS).map(([act, roles]) => `- To ${act}: ${roles.join(', ')}.`);
  return `${HEAD}\n\`x\`: may. \`o\`: also without signing in.\n\n${parts.join('\n\n')}\n\n## Within a call\n\n${acts.join('\n')}\n`;
};

describe('the page of who may do what', () => {
  it('is made from the table', () => {
    if (process.env['WRITE_WHO_MAY']) writeFileSync(PAGE, page());
    expect(readFileSync(PAGE, 'utf8')).toBe(page());
  });

  it('names every route, each with somebody who may', () => {
    expect(Object.keys(WHO_MAY).sort()).toEqual(Object.keys(routes).sort());
    for (const [name, access] of Object.entries(WHO_MAY)) expect([name, access.length > 0]).toEqual([name, true]);
  });

  it('a route that the table does not have is refused to everybody', () => {
    for (const name of ['noSuchRoute', 'constructor', 'toString', '__proto__'])
      expect([name, may([...ROLES], name)]).toEqual([name, false]);
    expect(may(null, 'listHulls')).toBe(false);
  });
});
