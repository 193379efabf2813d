import type { CertificateView } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { paperPath, post } from '../api/ask.js';
import { certificatesQuery } from '../api/queries-of-certificates.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { RecordForm } from '../entry/record-form.js';
import { Empty, Section } from '../ui/page.js';
import { Fold } from '../ui/fold.js';
import { ChangedValues } from '../record/changed-values.js';
import { Day } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';

const SAYS = {
  'being made': 'certificate.beingMade',
  current: 'certificate.isCurrent',
  replaced: 'certificate.isReplaced',
  withdrawn: 'certificate.isWithdrawn',
} as const;

/** The certificate of a hull: its issues, with the way to issue one, or to withdraw one. */
export const Certificates = ({ number, released }: { readonly number: string; readonly released: boolean }) => {
  const { t } = useWords();
  const query = useQuery(certificatesQuery(number));
  return (
    <Section name={t('certificate.certificates')}>
      <Answer what={t('certificate.certificates')} query={query}>
        {(issues) => (
          <>
            {issues.length === 0 ? <Empty>{t('certificate.none')}</Empty> : null}
            <ul className="plain">
              {issues.map((issue) => (
                <Issue key={issue.id} of={issue} />
              ))}
            </ul>
            {released ? <IssueIt number={number} again={issues.length > 0} /> : null}
          </>
        )}
      </Answer>
    </Section>
  );
};

const Issue = ({ of }: { readonly of: CertificateView }) => {
  const { t } = useWords();
  const name = t('certificate.issued', { issue: of.issue, number: of.number });
  return (
    <li>
      {of.file === null ? (
        name
      ) : (
        <a href={paperPath('/api/certificates/:certificate/file.pdf', { certificate: of.id })}>{name}</a>
      )}{' '}
      <Day at={of.issuedAt} /> <b>{t(SAYS[of.state])}</b>
      {of.withdrawnFor === null ? null : (
        <p className="soft">
          <Said text={of.withdrawnFor} />
        </p>
      )}
      <ChangedValues of={of.changed ?? []} />
      {of.state === 'current' ? <Withdraw of={of} /> : null}
    </li>
  );
};

const IssueIt = ({ number, again }: { readonly number: string; readonly again: boolean }) => {
  const { t } = useWords();
  return (
    <Allowed to="issueCertificate" what={t('certificate.issueIt')}>
      <p className="soft">{t('certificate.issueIs')}</p>
      <RecordForm
        groups={[]}
        button={t(again ? 'certificate.issueAgain' : 'certificate.issueIt')}
        send={(_, envelope) => post('/api/hulls/:number/certificates', { number }, envelope)}
        done={() => <p>{t('certificate.isIssued')}</p>}
      />
    </Allowed>
  );
};

const Withdraw = ({ of: { id, issue } }: { readonly of: CertificateView }) => {
  const { t } = useWords();
  const name = t('certificate.withdraw', { issue });
  return (
    <Allowed to="withdrawCertificate" what={name}>
      <Fold summary={name}>
        <RecordForm
          groups={[{ fields: [{ name: 'reason', label: t('record.reason'), kind: 'words' }] }]}
          button={name}
          send={(said, envelope) =>
            post(
              '/api/certificates/:certificate/withdrawals',
              { certificate: id },
              { ...envelope, reason: said('reason') },
            )
          }
          done={() => <p>{t('certificate.withdrawn')}</p>}
        />
      </Fold>
    </Allowed>
  );
};
