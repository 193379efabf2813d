import { useState } from 'react';
import { usePreferences } from '../preferences/use-preferences.js';
import { Toggle } from '../ui/toggle.js';
import { useWords } from '../words/use-words.js';

/** A tablet in the sun is turned to glare by one touch, and by another back to what it was. */
export const GlareButton = () => {
  const { t } = useWords();
  const [{ theme }, choose] = usePreferences();
  const [before, setBefore] = useState<typeof theme>('system');
  const turn = (on: boolean): void => {
    if (on) setBefore(theme);
    choose({ theme: on ? 'glare' : before });
  };
  return (
    <Toggle on={theme === 'glare'} onChange={turn}>
      {t('app.glare')}
    </Toggle>
  );
};
