import { preferenceStore } from './store.js';

/** Puts the chosen theme and language on the document, now and at each new choice. `system` leaves light or dark to the device. */
export const showPreferences = (): void => {
  const show = (): void => {
    const { theme, language } = preferenceStore.get();
    document.documentElement.lang = language;
    if (theme === 'system') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = theme;
  };
  preferenceStore.subscribe(show);
  show();
};
