import { useQueryClient } from '@tanstack/react-query';
import { getRouteApi, useNavigate } from '@tanstack/react-router';
import { useState, useSyncExternalStore } from 'react';
import { post } from '../api/ask.js';
import { fieldErrors, Refused, Unreachable } from '../api/problem.js';
import { session } from '../api/session.js';
import { useDay } from '../day/use-day.js';
import { clock } from '../device/clock.js';
import { holding } from '../device/holder.js';
import { network } from '../device/network.js';
import { isLanguage, LANGUAGES } from '../language/language.js';
import { drain } from '../outbox/drain.js';
import { usePreferences } from '../preferences/use-preferences.js';
import { Acts, StationPage } from '../station-frame/station-page.js';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { TextField } from '../ui/text-field.js';
import { Toggle } from '../ui/toggle.js';
import { useWords } from '../words/use-words.js';

const route = getRouteApi('/station/take-over');
const FIELDS = { badge: 'badge', secret: 'secret' } as const;

/** Where somebody takes over the tablet: by badge and PIN; with no network by the badge alone, which is confirmed later. */
export const TakeOverPage = () => {
  const { t } = useWords();
  const { reached } = useSyncExternalStore(network.subscribe, network.get);
  const [badge, setBadge] = useState('');
  const [secret, setSecret] = useState('');
  const [wrong, setWrong] = useState('');
  const [busy, setBusy] = useState(false);
  const client = useQueryClient();
  const navigate = useNavigate();
  // Handed over for a signature, it leads back to it.
  const { part, layer } = route.useSearch();
  const { day } = useDay();
  const arrived = (): void => {
    void client.invalidateQueries();
    void navigate(part && layer ? { to: '/station/sign', search: { part, layer } } : { to: '/station' });
  };
  const signIn = async (): Promise<void> => {
    setBusy(true);
    setWrong('');
    try {
      const view = await post('/api/sign-in', {}, { badge, secret });
      holding.take(null);
      session.told(view);
      void drain().catch(() => undefined);
      arrived();
    } catch (error) {
      if (error instanceof Unreachable) network.tried(false);
      else setWrong(error instanceof Refused ? (fieldErrors(error)[0]?.detail ?? error.message) : t('app.notShown'));
    } finally {
      setBusy(false);
    }
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
      <Form onSubmit={() => (reached ? void signIn() : byBadge())}>
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
