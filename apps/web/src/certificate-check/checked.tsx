import type { CheckedCertificate } from '@hull-record/contracts';
import { Facts } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

const SAYS = {
  current: 'certificate.isCurrent',
  replaced: 'certificate.isReplaced',
  withdrawn: 'certificate.isWithdrawn',
  'not known': 'certificate.isNotKnown',
} as const;

/** The answer about a certificate, in words first, and what is on record of it. */
export const Checked = ({ answer: { is, certificate, newestIssue } }: { readonly answer: CheckedCertificate }) => {
  const { t } = useWords();
  return (
    <div className="verdict">
      <p className={is === 'current' ? 'lead' : 'lead wrong'}>
        <b>{t(SAYS[is])}</b>
      </p>
      {is === 'replaced' && newestIssue !== null ? <p>{t('certificate.newest', { issue: newestIssue })}</p> : null}
      {certificate === null ? null : (
        <Facts
          rows={[
            [t('certificate.number'), <span className="n">{certificate.number}</span>],
            [t('certificate.issue'), `${certificate.issue}, ${certificate.issuedOn}`],
            [t('record.hull'), <span className="n">{certificate.hull}</span>],
            [
              t('record.hin'),
              certificate.hin === null ? t('record.notYet') : <span className="n">{certificate.hin}</span>,
            ],
            [t('record.model'), certificate.model],
          ]}
        />
      )}
      <p className="soft">{t(is === 'current' ? 'certificate.saysNoMore' : 'certificate.askBuilder')}</p>
    </div>
  );
};
