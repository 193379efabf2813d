import { useQuery } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import { openIdLinksQuery } from '../api/queries-of-people.js';
import { Answer } from '../asked/answer.js';
import { ActButton } from '../entry/act-button.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Empty } from '../ui/page.js';
import { useWords } from '../words/use-words.js';

/** The accounts of the office that sign in a person, one more, and the end of one. */
export const OpenIdLinks = ({ badge }: { readonly badge: string }) => {
  const { t } = useWords();
  const query = useQuery(openIdLinksQuery(badge));
  return (
    <>
      <Answer what={t('people.theLinks')} query={query}>
        {(links) =>
          links.length === 0 ? (
            <Empty>{t('people.noLinks')}</Empty>
          ) : (
            <ul className="plain ruled">
              {links.map(({ issuer, subject }) => (
                <li key={`${issuer} ${subject}`}>
                  <span className="n">{subject}</span> {issuer}
                  <ActButton
                    words={t('people.unlink')}
                    sure={t('people.unlinkSure', { badge })}
                    act={() => post('/api/people/:badge/open-id-link-ends', { badge }, { subject })}
                    done={() => <p>{mark('made', t('people.unlinked'))}</p>}
                  />
                </li>
              ))}
            </ul>
          )
        }
      </Answer>
      <RecordForm
        groups={[
          { fields: [{ name: 'subject', label: t('people.subject'), kind: 'words', hint: t('people.subjectHint') }] },
        ]}
        button={t('people.link')}
        sure={() => t('people.linkSure', { badge })}
        send={(said) => post('/api/people/:badge/open-id-links', { badge }, { subject: said('subject') })}
        done={() => <p>{mark('made', t('people.linked'))}</p>}
      />
    </>
  );
};
