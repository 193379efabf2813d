import { LANGUAGES, type Language } from '../language/language.js';
import { CHOICES, type Preferences } from '../preferences/preferences.js';
import { usePreferences } from '../preferences/use-preferences.js';
import { Page, Section } from '../ui/page.js';
import { Radios } from '../ui/radios.js';
import { unitSign } from '../words/figures.js';
import { useWords } from '../words/use-words.js';

/** What a person chooses for this device: language, theme and units. */
export const SettingsPage = () => {
  const { t } = useWords();
  const [preferences, choose] = usePreferences();
  const languages = Object.entries(LANGUAGES) as [Language, string][];
  return (
    <Page title={t('app.nav.settings')} name={t('app.nav.settings')}>
      <p className="lead">{t('settings.lead')}</p>
      <Section name={t('settings.language')}>
        <Radios
          label={t('settings.texts')}
          value={preferences.language}
          options={languages.map(([code, name]) => [code, name, code])}
          onChange={(language) => choose({ language })}
        />
        <p className="note soft">{t('settings.languageHow')}</p>
      </Section>
      <Section name={t('settings.look')}>
        <Radios
          label={t('settings.theme')}
          value={preferences.theme}
          options={CHOICES.theme.map((theme) => [theme, t(`settings.theme.${theme}`)])}
          onChange={(theme) => choose({ theme })}
        />
      </Section>
      <Section name={t('settings.units')}>
        <UnitChoices preferences={preferences} choose={choose} />
        <p className="note soft">{t('settings.unitsHow')}</p>
      </Section>
    </Page>
  );
};

interface UnitChoicesProps {
  readonly preferences: Preferences;
  readonly choose: (chosen: Partial<Preferences>) => void;
}

const UnitChoices = ({ preferences: { film, temperature, mass }, choose }: UnitChoicesProps) => {
  const { t } = useWords();
  const named = <U extends string>(units: readonly U[]): (readonly [U, string])[] =>
    units.map((unit) => [unit, unit === 'recorded' ? t('settings.recorded') : unitSign(unit)]);
  return (
    <div className="choices">
      <Radios
        label={t('settings.film')}
        value={film}
        options={named(CHOICES.film)}
        onChange={(unit) => choose({ film: unit })}
      />
      <Radios
        label={t('settings.temperature')}
        value={temperature}
        options={named(CHOICES.temperature)}
        onChange={(unit) => choose({ temperature: unit })}
      />
      <Radios
        label={t('settings.mass')}
        value={mass}
        options={named(CHOICES.mass)}
        onChange={(unit) => choose({ mass: unit })}
      />
    </div>
  );
};
