import { useMutation } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { post } from '../api/ask.js';
import { Refused } from '../api/problem.js';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { Page, Section } from '../ui/page.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';
import { Checked } from './checked.js';
import { digestOfFile } from './digest-of-file.js';
import { FileToCheck } from './file-to-check.js';

/** What somebody has of a certificate: its code, perhaps with its number, or the file. */
type Has = { readonly code: string; readonly number?: string } | { readonly sha256: string };

/** Where anybody asks whether a certificate is genuine and current. The code of a scanned one stands behind the #. */
export const CheckPage = () => {
  const { t } = useWords();
  const [code, setCode] = useState(() => decodeURIComponent(window.location.hash.slice(1)));
  const [number, setNumber] = useState('');
  const asking = useMutation({ mutationFn: (has: Has) => post('/api/certificate-checks', {}, has) });
  const { mutate } = asking;
  useEffect(() => {
    const scanned = decodeURIComponent(window.location.hash.slice(1));
    if (scanned !== '') mutate({ code: scanned });
  }, [mutate]);
  return (
    <Page title={t('certificate.check')} name={t('certificate.check')}>
      <p className="lead">{t('certificate.checkLead')}</p>
      <div role="status">{asking.data ? <Checked answer={asking.data} /> : null}</div>
      {asking.error ? (
        <p className="wrong" role="alert">
          {asking.error instanceof Refused ? asking.error.message : t('app.unreachable')}
        </p>
      ) : null}
      <Section name={t('certificate.byCode')}>
        <Form onSubmit={() => mutate({ code, ...(number === '' ? {} : { number }) })} checkedBy="service">
          <TextField
            label={t('certificate.code')}
            hint={t('certificate.codeHint')}
            kind="text"
            value={code}
            onChange={setCode}
          />
          <TextField
            label={t('certificate.number')}
            hint={t('certificate.numberHint')}
            kind="text"
            value={number}
            onChange={setNumber}
          />
          <Button type="submit" className="btn do" busy={asking.isPending}>
            {t('certificate.ask')}
          </Button>
        </Form>
      </Section>
      <Section name={t('certificate.byFile')}>
        <p className="soft">{t('certificate.byFileIs')}</p>
        <FileToCheck onFile={(file) => void digestOfFile(file).then((sha256) => mutate({ sha256 }))} />
      </Section>
    </Page>
  );
};
