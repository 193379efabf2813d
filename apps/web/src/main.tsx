import './look/tokens.css';
import './look/base.css';
import './look/page.css';
import './look/drawing.css';
import './look/desk.css';
import './look/holds.css';
import './look/bay.css';
import './look/hull-record.css';
import './look/process-charts.css';
import './look/many-map.css';
import './look/traces.css';
import './look/claims.css';
import './look/certificate.css';
import './look/repair.css';
import './look/models.css';
import './look/narrow.css';
import './look/touch.css';
import './look/station.css';
import './look/station-readings.css';
import './look/station-layers.css';
import './look/print.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { queryClient } from './app/query-client.js';
import { prepareRouter, router } from './app/router.js';
import { WithWords } from './app/with-words.js';
import type { Catalogue } from './language/catalogue.js';
import type { Language } from './language/language.js';
import { loadCatalogue } from './language/load-catalogue.js';
import { showTheme } from './preferences/show-theme.js';
import { preferenceStore } from './preferences/store.js';

/** The time zone of the plant, as the service wrote it into the page. */
const timeZone = document.querySelector<HTMLMetaElement>('meta[name="plant-time-zone"]')?.content ?? 'UTC';

/** Said when the texts themselves did not come: there are none to say it with. */
const NO_TEXTS =
  'The service does not answer. Load the page again. · El servicio no responde. Cargue la página de nuevo.';

const show = (place: Element, first: readonly [Language, Catalogue]): void =>
  createRoot(place).render(
    <StrictMode>
      <QueryClientProvider client={queryClient}>
        <WithWords first={first} timeZone={timeZone}>
          <RouterProvider router={router} />
        </WithWords>
      </QueryClientProvider>
    </StrictMode>,
  );

showTheme();
prepareRouter();
const place = document.querySelector('#root') ?? document.body;
const { language } = preferenceStore.get();
loadCatalogue(language).then(
  (catalogue) => show(place, [language, catalogue]),
  () => place.replaceChildren(NO_TEXTS),
);
