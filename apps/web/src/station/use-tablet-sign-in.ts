import { useState } from 'react';
import type { SessionView } from '@hull-record/contracts';
import { post } from '../api/ask.js';
import { fieldErrors, Refused, Unreachable } from '../api/problem.js';
import { session } from '../api/session.js';
import { holding } from '../device/holder.js';
import { network } from '../device/network.js';
import { drain } from '../outbox/drain.js';
import { useWords } from '../words/use-words.js';

interface TabletSignIn {
  /** Signs in; who that is, when the service said so: the tablet is theirs then. */
  readonly signIn: (badge: string, secret: string) => Promise<SessionView | null>;
  readonly busy: boolean;
  /** What was wrong with it; empty when nothing was. */
  readonly wrong: string;
}

/** Taking over the tablet by badge and PIN. What waits is sent at once, under the session that is new. */
export const useTabletSignIn = (): TabletSignIn => {
  const { t } = useWords();
  const [busy, setBusy] = useState(false);
  const [wrong, setWrong] = useState('');
  const signIn = async (badge: string, secret: string): Promise<SessionView | null> => {
    setBusy(true);
    setWrong('');
    try {
      const view = await post('/api/sign-in', {}, { badge, secret });
      holding.take(null);
      session.told(view);
      void drain().catch(() => undefined);
      return view;
    } catch (error) {
      if (error instanceof Unreachable) network.tried(false);
      else setWrong(error instanceof Refused ? (fieldErrors(error)[0]?.detail ?? error.message) : t('app.notShown'));
      return null;
    } finally {
      setBusy(false);
    }
  };
  return { signIn, busy, wrong };
};
