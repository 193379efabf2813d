import { useState } from 'react';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';
import { useTabletSignIn } from './use-tablet-sign-in.js';

const FIELDS = { badge: 'badge', secret: 'secret' } as const;

interface SignHereProps {
  readonly makers: readonly string[];
  /** Keeps the signature of who has the tablet now. */
  readonly onProved: () => Promise<void>;
}

/**
 * Signing on a tablet that somebody else has: badge and PIN of the signer, and nothing more. The tablet is the signer's
 * from then on, so that nobody goes on in a name that is not theirs; whoever had it takes it back with their own PIN.
 */
export const SignHere = ({ makers, onProved }: SignHereProps) => {
  const { t } = useWords();
  const { signIn, busy, wrong } = useTabletSignIn();
  const [badge, setBadge] = useState('');
  const [secret, setSecret] = useState('');
  const [whyNot, setWhyNot] = useState('');
  const sign = async (): Promise<void> => {
    setWhyNot('');
    const isMaker = makers.some((maker) => maker.toLowerCase() === badge.trim().toLowerCase());
    if (isMaker) return setWhyNot(t('sign.madeItToo', { badge: badge.trim() }));
    const view = await signIn(badge.trim(), secret);
    setSecret('');
    if (view === null || view.person === null) return;
    if (!view.person.roles.some((role) => role === 'inspector' || role === 'quality'))
      return setWhyNot(t('sign.notYours'));
    await onProved();
  };
  const said = whyNot === '' ? wrong : whyNot;
  return (
    <Form onSubmit={() => void sign()}>
      <p>{t('sign.here')}</p>
      <div className="st-fields">
        <TextField name={FIELDS.badge} label={t('sign.badge')} value={badge} onChange={setBadge} kind="text" />
        <TextField name={FIELDS.secret} label={t('station.pin')} value={secret} onChange={setSecret} kind="secret" />
      </div>
      {said === '' ? null : (
        <p className="wrong" role="alert">
          {said}
        </p>
      )}
      <Button type="submit" className="btn do" busy={busy}>
        {t('sign.doHere')}
        <small>{t('sign.tabletIsTheirs')}</small>
      </Button>
    </Form>
  );
};
