import type { OwnHull } from '@hull-record/contracts';
import { paperPath } from '../api/ask.js';
import { useWords } from '../words/use-words.js';

/** The certificate of an own hull, and whether it still holds. */
export const OwnCertificateCell = ({ number, certificate }: Pick<OwnHull, 'number' | 'certificate'>) => {
  const { t } = useWords();
  if (certificate === null) return <span className="soft">{t('record.notYet')}</span>;
  return (
    <>
      <a href={paperPath('/api/own-hulls/:number/certificate.pdf', { number })}>
        {t('certificate.issued', { issue: certificate.issue, number: certificate.number })}
      </a>
      {certificate.state === 'withdrawn' ? (
        <p className="wrong">
          {t('certificate.isWithdrawn')} {t('certificate.askBuilder')}
        </p>
      ) : null}
      {certificate.newIssueWaits ? <p className="soft">{t('certificate.waits')}</p> : null}
    </>
  );
};
