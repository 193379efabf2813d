import type { ReactNode } from 'react';
import { I18nProvider } from 'react-aria-components';

interface KitLanguageProps {
  readonly language: string;
  readonly children: ReactNode;
}

/** Lets the component kit speak the language that was chosen, and not the browser's. */
export const KitLanguage = ({ language, children }: KitLanguageProps) => (
  <I18nProvider locale={language}>{children}</I18nProvider>
);
