import { preferenceStore } from './store.js';

/** Puts the chosen theme on the document, now and at each new choice. `system` leaves light or dark to the device. */
export const showTheme = (): void => {
  const show = (): void => {
    const { theme } = preferenceStore.get();
    if (theme === 'system') delete document.documentElement.dataset['theme'];
    else document.documentElement.dataset['theme'] = theme;
  };
  preferenceStore.subscribe(show);
  show();
};
