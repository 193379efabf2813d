import { h, nodesOf } from './platform/dom.js';
import { empty, heading, link, type Page } from './platform/page.js';
import { readRoute, type Route } from './platform/route.js';
import { zoneWords } from './platform/words.js';
import { defectPage } from './defects/defect-page.js';
import { homePage } from './home/home-page.js';
import { hullPage } from './hulls/hull-page.js';
import { hullsPage } from './hulls/hulls-page.js';
import { lotPage } from './lots/lot-page.js';
import { lotsPage } from './lots/lots-page.js';
import { hatchDefinitions } from './marks/hatches.js';
import { searchPage } from './search/search-page.js';

const pageFor = (route: Route): Page => {
  const [kind, name, ...more] = route.path;
  if (more.length > 0) return noPage();
  if (kind === undefined) return homePage();
  if (kind === 'hulls') return name === undefined ? hullsPage(route) : hullPage(name);
  if (kind === 'lots') return name === undefined ? lotsPage(route) : lotPage(route, name);
  if (kind === 'defects' && name !== undefined) return defectPage(name);
  if (kind === 'search' && name === undefined) return searchPage(route);
  return noPage();
};

const noPage = (): Page => ({
  title: 'No such page',
  content: [
    heading('No such page'),
    empty('This address leads nowhere. Begin at the ', link('#/', 'start'), ' or at ', link('#/search', 'Search'), '.'),
  ],
});

const main = document.querySelector<HTMLElement>('#page') ?? document.body;

/** Shows the page that the address names; reading begins at its heading. */
const show = (): void => {
  const route = readRoute(location.hash);
  const page = pageFor(route);
  document.title = `${page.title} · Hull Record`;
  main.replaceChildren(...nodesOf(page.content));
  for (const each of document.querySelectorAll('nav a')) {
    if (each.getAttribute('href') === `#/${route.path[0] ?? ''}`) each.setAttribute('aria-current', 'page');
    else each.removeAttribute('aria-current');
  }
};

const go = (): void => {
  show();
  scrollTo(0, 0);
  main.querySelector('h1')?.focus({ preventScroll: true });
};

document.body.append(hatchDefinitions());
document.querySelector('#clock')?.replaceChildren(h('span', {}, zoneWords()));
document.querySelector('#skip')?.addEventListener('click', () => main.focus());
addEventListener('hashchange', go);
show();
