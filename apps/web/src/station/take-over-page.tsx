import { useQueryClient } from '@tanstack/react-query';
import { getRouteApi, useNavigate } from '@tanstack/react-router';
import { useState, useSyncExternalStore } from 'react';
import { useDay } from '../day/use-day.js';
import { clock } from '../device/clock.js';
import { holding } from '../device/holder.js';
import { network } from '../device/network.js';
import { isLanguage, LANGUAGES } from '../language/language.js';
import { usePreferences } from '../preferences/use-preferences.js';
import { Acts, StationPage } from '../station-frame/station-page.js';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { TextField } from '../ui/text-field.js';
import { Toggle } from '../ui/toggle.js';
import { useWords } from '../words/use-words.js';
import { useTabletSignIn } from './use-tablet-sign-in.js';

const route = getRouteApi('/station/take-over');
const FIELDS = { badge: 'badge', secret: 'secret' } as const;

/** Where somebody takes over the tablet: by badge and PIN; with no network by the badge alone, which is confirmed later. */
export const TakeOverPage = () => {
  const { t } = useWords();
  const { reached } = useSyncExternalStore(network.subscribe, network.get);
  const [badge, setBadge] = useState('');
  const [secret, setSecret] = useState('');
  const { signIn, busy, wrong } = useTabletSignIn();
  const client = useQueryClient();
  const navigate = useNavigate();
  // Handed over for a signature or the word of a shift lead, it leads back to it.
  const { part, layer, task } = route.useSearch();
  const { day } = useDay();
  const arrived = (): void => {
    void client.invalidateQueries();
    if (part && layer)
      void navigate({ to: task === 'layer' ? '/station/layer' : '/station/sign', search: { part, layer } });
    else void navigate({ to: '/station' });
  };
  const signInHere = async (): Promise<void> => {
    if ((await signIn(badge, secret)) !== null) arrived();
  };
  const byBadge = (): void => {
    if (badge.trim() === '') return;
    const known = day?.people.find((person) => person.badge.toLowerCase() === badge.trim().toLowerCase());
    holding.take({
      badge: known?.badge ?? badge.trim(),
      roles: known?.roles ?? [],
      proved: false,
      since: clock.instant(),
    });
    arrived();
  };
  return (
    <StationPage title={t('station.takeOver')} name={t('station.takeOver')}>
      <Form onSubmit={() => (reached ? void signInHere() : byBadge())}>
        <TextField name={FIELDS.badge} label={t('signIn.badge')} value={badge} onChange={setBadge} kind="text" />
        {reached ? (
          <TextField
            name={FIELDS.secret}
            label={t('station.pin')}
            value={secret}
            onChange={setSecret}
            kind="secret"
            fills="current-password"
          />
        ) : (
          <p className="caution">{t('station.byBadge')}</p>
        )}
        {wrong === '' ? null : (
          <p className="wrong" role="alert">
            {wrong}
          </p>
        )}
        <Acts>
          <Button type="submit" className="btn do" busy={busy}>
            {t(reached ? 'station.takeIt' : 'station.takeItByBadge')}
          </Button>
        </Acts>
      </Form>
      <Languages />
    </StationPage>
  );
};

const Languages = () => {
  const [{ language }, choose] = usePreferences();
  return (
    <div className="st-languages">
      {Object.entries(LANGUAGES).map(([each, name]) => (
        <Toggle key={each} on={each === language} onChange={() => isLanguage(each) && choose({ language: each })}>
          <span lang={each}>{name}</span>
        </Toggle>
      ))}
    </div>
  );
};
