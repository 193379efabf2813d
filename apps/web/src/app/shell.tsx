import { useQuery } from '@tanstack/react-query';
import { Link, Outlet, useNavigate, useRouterState } from '@tanstack/react-router';
import { useRef } from 'react';
import { sessionQuery } from '../api/queries.js';
import { GlareButton } from '../marks/glare-button.js';
import { useMay } from '../api/use-may.js';
import { HatchDefinitions } from '../marks/hatches.js';
import { Button } from '../ui/button.js';
import { FindBox } from '../ui/find-box.js';
import { WhoIsHere } from './who-is-here.js';
import { useWords } from '../words/use-words.js';

/** The frame around every page; the station has a frame of its own. */
export const Shell = () => {
  const atStation = useRouterState({ select: ({ location }) => /^\/station(\/|$)/.test(location.pathname) });
  return (
    <>
      {atStation ? <Outlet /> : <Desk />}
      <HatchDefinitions />
    </>
  );
};

/** The frame around the pages of the desk: where one can go, the page, and what all of it is. */
const Desk = () => {
  const { t } = useWords();
  const page = useRef<HTMLElement>(null);
  return (
    <>
      <Button className="skip" onPress={() => page.current?.focus()}>
        {t('app.skip')}
      </Button>
      <Bar />
      <main id="page" tabIndex={-1} ref={page}>
        <Outlet />
      </main>
      <Foot />
    </>
  );
};

const Bar = () => {
  const { t } = useWords();
  const navigate = useNavigate();
  return (
    <header className="bar">
      <Link to="/" className="mark">
        <Keel />
        <span>{t('app.name')}</span>
      </Link>
      <nav aria-label={t('app.nav')}>
        <Ways />
      </nav>
      <div className="own">
        <FindBox
          label={t('app.find')}
          hint={t('app.findHint')}
          onFind={(words) => void navigate({ to: '/search', search: { for: words } })}
        />
        <GlareButton />
        <WhoIsHere />
        <Link to="/settings">{t('app.nav.settings')}</Link>
      </div>
    </header>
  );
};

/** Where one can go: a dealer to own hulls, everybody else through the plant. */
const Ways = () => {
  const { t } = useWords();
  const { data } = useQuery(sessionQuery);
  if (!data) return null;
  const roles = data.person?.roles ?? [];
  const looksForDealer = roles.includes('dealer');
  const ofPlant = !looksForDealer || roles.length > 1;
  return (
    <>
      {looksForDealer ? <Link to="/own-hulls">{t('ownHulls.title')}</Link> : null}
      {ofPlant ? <Link to="/hulls">{t('app.nav.hulls')}</Link> : null}
      {ofPlant ? <Link to="/lots">{t('app.nav.lots')}</Link> : null}
      {ofPlant ? <DeskWays /> : null}
      {ofPlant ? <Link to="/trace">{t('traces.nav')}</Link> : null}
      {ofPlant ? <Link to="/map">{t('manyMap.nav')}</Link> : null}
      {ofPlant ? <Link to="/search">{t('app.nav.search')}</Link> : null}
    </>
  );
};

/** The pages of the desk, each to whose job it is. */
const DeskWays = () => {
  const { t } = useWords();
  const may = useMay();
  return (
    <>
      {may('listStock') ? <Link to="/store">{t('store.title')}</Link> : null}
      {may('listWaiting') ? <Link to="/quality">{t('quality.title')}</Link> : null}
      {may('checkEquipment') ? <Link to="/equipment">{t('equipment.nav')}</Link> : null}
      {may('registerPerson') ? <Link to="/people">{t('people.title')}</Link> : null}
      {may('listHolds') ? <Link to="/holds">{t('holds.title')}</Link> : null}
      {may('listAllOwners') ? <Link to="/owners">{t('app.nav.owners')}</Link> : null}
      {may('listClaims') ? <Link to="/claims">{t('app.nav.claims')}</Link> : null}
      {may('listCases') ? <Link to="/cases">{t('app.nav.cases')}</Link> : null}
    </>
  );
};

/** Two hulls in section, one in the other. */
const Keel = () => (
  <svg width="30" height="24" viewBox="0 0 30 24" aria-hidden="true">
    <path d="M1 3L15 21L29 3" className="keel" />
    <path d="M7.2 3L15 13L22.8 3" className="keel inner" />
  </svg>
);

const Foot = () => {
  const { t, times } = useWords();
  return (
    <footer className="foot note soft">
      <p>{t('app.footZone', { zone: times.zone(new Date()) })}</p>
      <p>{t('app.footNot')}</p>
    </footer>
  );
};
