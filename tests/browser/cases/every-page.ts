import { describe, expect, it } from '@jest/globals';
import type { BrowserContextOptions } from 'playwright-core';
import { axeFindings } from '../../support/web/axe.js';
import { close, open, openIn, page, service } from '../stage.js';

const DESK = { viewport: { width: 1280, height: 800 } };
const PHONE = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };

/** An address with a text that its page shows when it is whole, in English and in Spanish. */
export const PAGES = [
  ['/', 'The hulls begun last', 'Los últimos cascos iniciados'],
  ['/hulls', 'Hulls, the newest first', 'Cascos, los más nuevos primero'],
  ['/hulls/86-1', 'Received lots, by role', 'Lotes recibidos, por función'],
  ['/lots', 'Lots, the newest first', 'Lotes, los más nuevos primero'],
  ['/lots/R-BAD', 'Hulls and parts that hold lot R-BAD', 'Cascos y piezas que contienen el lote R-BAD'],
  ['/lots/T1-2', 'Mass fractions of received lots', 'Fracciones en masa de los lotes recibidos'],
  ['/search?for=86&hulls=86-1,86-2', 'Lots held by 2 hulls entered', 'Lotes que contienen 2 cascos escritos'],
  ['/store', 'Lots that wait to be released', 'Lotes que esperan ser liberados'],
  ['/store/receive', 'Our lot code', 'Nuestro código de lote'],
  ['/store/mix', 'Never mix catalyst and promoter directly', 'Nunca mezcle directamente catalizador y promotor'],
  ['/store/kit', 'A kit is a lot of its own', 'Un kit es un lote propio'],
  ['/store/materials', 'Materials, by code', 'Materiales, por código'],
  ['/store/lots/R-BAD', 'Received = used', 'Recibido = usado'],
  ['/tanks/T1', 'Received lots in the tank now', 'Lotes recibidos en el tanque ahora'],
  ['/labels?of=lot&codes=R-BAD', 'on 1 page', 'en 1 página'],
  ['/quality', 'What was done against a rule', 'Lo hecho contra una regla'],
  ['/quality/release?hull=86-1', 'What stands in the way, part by part', 'Qué lo impide, pieza por pieza'],
  ['/quality/counts', 'Defects per hull made', 'Defectos por casco hecho'],
  ['/quality/concessions', 'Concessions', 'Concesiones'],
  ['/charts', 'What can be charted', 'Qué se puede graficar'],
  ['/charts/wet%20film?model=TS86&layer=L1', 'All hulls have the same mean', 'Todos los cascos tienen'],
  ['/people', 'Badges with their roles', 'Credenciales con sus funciones'],
  ['/people/INS-1', 'A one-time code lets the person', 'Un código de un solo uso deja'],
  ['/devices', 'NFPA 33', 'NFPA 33'],
  ['/tokens', 'A token lets a program', 'Una clave deja que un programa'],
  ['/equipment', 'Equipment, what needs somebody first', 'Equipos, primero lo que necesita atención'],
  ['/equipment/MG-1', 'It was never checked.', 'Nunca se ha controlado.'],
  ['/molds', 'Molds, overdue care first', 'Moldes, primero los de cuidado atrasado'],
  ['/molds/M-86-1', 'Release and cleaners are often solvents', 'Desmoldantes y limpiadores suelen ser disolventes'],
  ['/models', 'Models, by code', 'Modelos, por código'],
  ['/models/new', 'A model is registered once', 'Un modelo se registra una vez'],
  ['/models/TS86', 'Zones of the deck along the hull', 'Zonas a lo largo del casco: cubierta'],
  ['/models/TS86/schedule?part=deck', 'Nothing differs from version 1', 'Nada cambia respecto a la versión 1'],
  ['/claims', 'No claim is filed yet.', 'Todavía no hay reclamos.'],
  ['/claims/new?hull=86-1', 'Spots on the hull', 'Puntos en el casco'],
  ['/warranty', 'Publish the next version', 'Publicar la versión siguiente'],
  ['/cases', 'No case is open.', 'No hay ningún caso abierto.'],
  ['/owners', 'No owner is on record', 'No consta ningún propietario'],
  ['/owners/hulls/86-1', 'Texts and photos that may show somebody', 'Textos y fotos que pueden mostrar a alguien'],
  ['/c', 'No sign-in is needed', 'No hace falta identificarse'],
  ['/settings', 'These choices are kept', 'Estas elecciones se guardan'],
  ['/sign-in', 'Each entry is kept', 'Cada anotación se guarda'],
  ['/enrol', 'Enter the one-time code', 'Escriba el código de un solo uso'],
  ['/l/boat/NONE', 'This label leads nowhere', 'Esta etiqueta no lleva a ninguna parte'],
  ['/nowhere', 'This address leads nowhere', 'Esta dirección no lleva a ninguna parte'],
] as const;

/** A screen with the language and the theme that it is looked at in. */
const DESK_IN_ENGLISH = ['desk in English', DESK] as const;
const PHONE_IN_SPANISH = ['phone in the dark in Spanish', { ...PHONE, colorScheme: 'dark', locale: 'es-MX' }] as const;

/** Opens an address in a page that stays for the next, and waits until it is whole. */
const whole = async (
  address: string,
  words: string,
  [name, options]: readonly [string, BrowserContextOptions],
): Promise<void> => {
  await openIn(name, address, options);
  await page.getByText(words).first().waitFor();
};

const findings = async (...of: Parameters<typeof whole>): Promise<readonly string[]> => {
  await whole(...of);
  await page.waitForLoadState('networkidle');
  return axeFindings(page);
};

/** Each page is looked at once here, by turns; in every size, language and theme by `npm run grid`. */
const BY_TURNS = PAGES.map(([address, english, spanish], i) =>
  i % 2 === 0
    ? ([address, 'at a desk', english, DESK_IN_ENGLISH] as const)
    : ([address, 'on a phone in the dark, in Spanish', spanish, PHONE_IN_SPANISH] as const),
);

describe('every page is without a finding of the accessibility checker', () => {
  it.each(BY_TURNS)('%s, %s', async (address, _, words, where) => {
    expect(await findings(address, words, where)).toEqual([]);
  });

  it('the page of a defect', async () => {
    const part = await fetch(`${service.url}/api/parts/86-1-H`, { headers: await service.signedIn() });
    const { defects } = (await part.json()) as { defects: { id: string }[] };
    expect(await findings(`/defects/${defects[0]?.id}`, 'Lots at its place', DESK_IN_ENGLISH)).toEqual([]);
  });

  it('and it would find one: a picture without words, and pale letters', async () => {
    await open('/settings');
    await page.getByRole('heading', { name: 'Units' }).waitFor();
    await page.evaluate(
      "document.querySelector('main').append(Object.assign(document.createElement('img'), { src: '/mark.svg' }));" +
        "document.querySelector('main .lead').style.color = '#ddd'",
    );
    expect(await axeFindings(page)).toEqual([
      expect.stringContaining('color-contrast'),
      expect.stringContaining('image-alt'),
    ]);
    await close();
  });
});

describe('every page', () => {
  it.each(PAGES)('%s has its title, one heading of the first rank, and landmarks', async (address, words, _) => {
    await whole(address, words, DESK_IN_ENGLISH);
    expect(await page.title()).toMatch(/^.+ · Hull Record$/);
    expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    for (const landmark of ['banner', 'navigation', 'main', 'contentinfo', 'search'] as const)
      expect([landmark, await page.getByRole(landmark).count()]).toEqual([landmark, 1]);
  });

  it.each(PAGES)('%s speaks Spanish on a phone, and is no wider than it', async (address, _, words) => {
    await whole(address, words, PHONE_IN_SPANISH);
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true);
  });
});

describe('on a device that is touched', () => {
  it.each(['/hulls/86-1', '/lots', '/settings', '/store', '/store/receive', '/store/lots/R-BAD', '/tanks/T1'])(
    'what is pressed at %s is 48 px high',
    async (address) => {
      await openIn('phone', address, PHONE);
      await page.getByRole('heading', { level: 1 }).waitFor();
      await page.waitForLoadState('networkidle');
      const low = await page.evaluate<string[]>(
        `[...document.querySelectorAll('button:not(.skip, .spot-button), .bar a, .radio, select, input:not([type=radio], [type=search]), textarea')]
        .filter((each) => each.offsetParent !== null && each.offsetHeight < 48)
        .map((each) => each.outerHTML.slice(0, 80))`,
      );
      expect(low).toEqual([]);
    },
  );
});
