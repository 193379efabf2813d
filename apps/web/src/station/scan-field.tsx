import { lazy, Suspense, useState } from 'react';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';
import { codeIn } from './code-in.js';

const Camera = lazy(() => import('./camera.js').then(({ Camera: component }) => ({ default: component })));
const FIELDS = { code: 'code' } as const;
/** Browsers show cameras to pages that came encrypted, or from the device itself. */
const HAS_CAMERAS = 'mediaDevices' in navigator;

interface ScanFieldProps {
  readonly label: string;
  readonly onCode: (code: string) => void;
}

/** Where a code is scanned or typed. Scanners that type end with Enter; the camera is there where the browser shows one. */
export const ScanField = ({ label, onCode }: ScanFieldProps) => {
  const { t } = useWords();
  const [typed, setTyped] = useState('');
  const [seeing, setSeeing] = useState(false);
  const take = (text: string): void => {
    const code = codeIn(text);
    setTyped('');
    setSeeing(false);
    if (code !== '') onCode(code);
  };
  return (
    <Form onSubmit={() => take(typed)}>
      <div className="st-scan">
        <TextField name={FIELDS.code} label={label} value={typed} onChange={setTyped} kind="text" />
        <Button type="submit">{t('scan.take')}</Button>
        {HAS_CAMERAS ? (
          <Button onPress={() => setSeeing((on) => !on)}>{t(seeing ? 'scan.stop' : 'scan.camera')}</Button>
        ) : null}
      </div>
      {seeing ? (
        <Suspense>
          <Camera onCode={take} />
        </Suspense>
      ) : null}
    </Form>
  );
};
