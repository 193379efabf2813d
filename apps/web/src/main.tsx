import './look/tokens.css';
import './look/base.css';
import './look/page.css';
import './look/drawing.css';
import './look/narrow.css';
import './look/touch.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { queryClient } from './app/query-client.js';
import { prepareRouter, router } from './app/router.js';
import { WithWords } from './app/with-words.js';
import { loadCatalogue } from './language/load-catalogue.js';
import { showPreferences } from './preferences/show-preferences.js';
import { preferenceStore } from './preferences/store.js';

/** The time zone of the plant, as the service wrote it into the page. */
const timeZone = document.querySelector<HTMLMetaElement>('meta[name="plant-time-zone"]')?.content ?? 'UTC';

showPreferences();
prepareRouter();
const { language } = preferenceStore.get();
const catalogue = await loadCatalogue(language);
const place = document.querySelector('#root');
if (place === null) throw new Error('The page has no place for the app.');
createRoot(place).render(
  <StrictMode>
    <QueryClientProvider client={queryClient}>
      <WithWords first={[language, catalogue]} timeZone={timeZone}>
        <RouterProvider router={router} />
      </WithWords>
    </QueryClientProvider>
  </StrictMode>,
);
