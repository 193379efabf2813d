import type { HullView } from '@hull-record/contracts';
import { h, type Child } from '../platform/dom.js';
import { empty, facts, heading, link, section, type Page } from '../platform/page.js';
import { region } from '../platform/region.js';
import { buildRecordPath, listMaterials, listModels, readHull } from '../platform/calls.js';
import { day } from '../platform/words.js';
import { whereabouts } from './hull-list.js';
import { lifeOf, numbersOf } from './life.js';
import { lotsIn } from './lots-in-hull.js';
import { partSection } from './part-section.js';
import type { Reference } from './reference.js';
import { inTheWay, releaseLine } from './release.js';

/** One hull, by its number or by any HIN it ever had: all that is recorded of it. */
export const hullPage = (number: string): Page => {
  const title = heading(number, 'Hull');
  const body = region({
    what: `hull ${number}`,
    load: () => Promise.all([readHull(number), listModels(), listMaterials()]),
    show: ([hull, models, materials]) => {
      title.querySelector('#name')?.replaceChildren(hull.number);
      return show(hull, { model: models.find(({ code }) => code === hull.model), materials });
    },
    notThere: () => notThere(number),
  });
  return { title: `Hull ${number}`, content: [title, body] };
};

const show = (hull: HullView, reference: Reference): Child => [
  h(
    'div',
    { class: 'head' },
    facts(identity(hull)),
    h('div', { class: 'release' }, releaseLine(hull.release), paper(hull.number)),
  ),
  inTheWay(hull.release),
  hull.parts.map((part) => partSection(part, reference)),
  lotsIn(hull.number),
  h('div', { class: 'pair' }, lifeOf(hull), numbersOf(hull)),
];

const identity = (hull: HullView): readonly (readonly [string, Child])[] => [
  ['HIN', hull.hin === null ? 'not assigned yet' : h('span', { class: 'n' }, hull.hin)],
  ['Model', `${hull.modelName} (${hull.model})`],
  ['Begun', hull.life[0] === undefined ? null : day(hull.life[0].happenedAt)],
  ['Now', whereabouts(hull.now)],
];

const paper = (number: string): Child =>
  h(
    'p',
    {},
    link(buildRecordPath(number), 'Build record'),
    h('span', { class: 'soft' }, ' PDF, as recorded up to now'),
  );

const notThere = (number: string): Child => [
  section(
    'Not on record',
    empty(
      `There is no hull ${number}. Check the number against the hull, or look for part of it in the `,
      link('#/hulls', 'list of hulls'),
      '. A number that was replaced still leads to its hull.',
    ),
  ),
];
