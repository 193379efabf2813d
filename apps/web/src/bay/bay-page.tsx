import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Link, useNavigate, useRouter } from '@tanstack/react-router';
import { useState } from 'react';
import { openHullsQuery } from '../api/queries-of-bay.js';
import { Answer } from '../asked/answer.js';
import { Trouble } from '../asked/trouble.js';
import { Button } from '../ui/button.js';
import { Form } from '../ui/form.js';
import { Page, Section } from '../ui/page.js';
import { TextField } from '../ui/text-field.js';
import { Term } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { findParts, type FoundPart } from './find-parts.js';
import { readSought } from './read-sought.js';

/** Where work at the quality station and in the repair bay begins: with the hull that stands there. */
export const BayPage = () => {
  const { t } = useWords();
  const navigate = useNavigate();
  const client = useQueryClient();
  const finding = useMutation({
    networkMode: 'always',
    mutationFn: (code: string) => findParts(client, code),
    onSuccess: ([only, ...more]) => {
      if (only !== undefined && more.length === 0)
        void navigate({ to: '/station/bay/$part', params: { part: only.number } });
    },
  });
  const { data, error, variables = '', isPending, mutate } = finding;
  return (
    <div className="bay">
      <Page title={t('bay.title')} name={t('bay.title')}>
        <p className="lead">{t('bay.lead')}</p>
        <Finder busy={isPending} onFind={mutate} />
        {error === null ? null : <Trouble what={t('bay.which')} error={error} again={() => mutate(variables)} />}
        {data === undefined ? null : <Found parts={data} code={variables} />}
        <WithDefects onFind={mutate} />
      </Page>
    </div>
  );
};

interface FinderProps {
  readonly busy: boolean;
  readonly onFind: (code: string) => void;
}

const Finder = ({ busy, onFind }: FinderProps) => {
  const { t } = useWords();
  const [typed, setTyped] = useState('');
  const { history } = useRouter();
  const find = (): void => {
    const sought = readSought(typed);
    if ('label' in sought) history.push(sought.label);
    else if (sought.code !== '') onFind(sought.code);
  };
  return (
    <Form onSubmit={find} errors={{}}>
      <TextField label={t('bay.which')} hint={t('bay.whichHint')} kind="text" value={typed} onChange={setTyped} />
      <Button type="submit" className="btn go" busy={busy}>
        {t('bay.open')}
      </Button>
    </Form>
  );
};

interface FoundProps {
  readonly parts: readonly FoundPart[];
  readonly code: string;
}

const Found = ({ parts, code }: FoundProps) => {
  const { t } = useWords();
  if (parts.length === 0)
    return (
      <p className="wrong" role="alert">
        {t('bay.notFound', { code })}
      </p>
    );
  return (
    <ul className="plain tasks" role="status">
      {parts.map(({ number, kind }) => (
        <li key={number}>
          <PartLink number={number}>
            <Term word={kind} />
          </PartLink>
        </li>
      ))}
    </ul>
  );
};

interface PartLinkProps {
  readonly number: string;
  readonly children: React.ReactNode;
}

const PartLink = ({ number, children }: PartLinkProps) => (
  <Link className="task" to="/station/bay/$part" params={{ part: number }}>
    <span className="n">{number}</span> {children}
  </Link>
);

/** Hulls on which something is open, so that the patcher need not ask what there is to do. */
const WithDefects = ({ onFind }: Pick<FinderProps, 'onFind'>) => {
  const { t } = useWords();
  const query = useQuery(openHullsQuery);
  return (
    <Section name={t('bay.withDefects')}>
      <Answer what={t('app.hulls')} query={query}>
        {(hulls) =>
          hulls.length === 0 ? (
            <p>{t('bay.noneOpen')}</p>
          ) : (
            <ul className="plain tasks">
              {hulls.map(({ number, openDefects }) => (
                <li key={number}>
                  <Button className="task" onPress={() => onFind(number)}>
                    <span className="n">{number}</span> {t('record.openDefects', { count: openDefects })}
                  </Button>
                </li>
              ))}
            </ul>
          )
        }
      </Answer>
    </Section>
  );
};
