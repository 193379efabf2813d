import type { OwnHull } from '@hull-record/contracts';
import { useQuery } from '@tanstack/react-query';
import { getRouteApi, Link } from '@tanstack/react-router';
import { paperPath } from '../api/ask.js';
import { ownHullQuery } from '../api/queries-of-own.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { Answer } from '../asked/answer.js';
import { Facts, Page } from '../ui/page.js';
import { useWords } from '../words/use-words.js';
import { OwnCertificateCell } from './own-certificate.js';
import { OwnClaims } from './own-claims.js';
import { OwnRepairs } from './own-repairs.js';

const route = getRouteApi('/own-hulls/$number');

/** One own hull: its papers, the claims on it, and its repairs done outside the plant. */
export const OwnHullPage = () => (
  <AfterSaleWords>
    <One />
  </AfterSaleWords>
);

const One = () => {
  const { t } = useWords();
  const { number } = route.useParams();
  const query = useQuery(ownHullQuery(number));
  return (
    <Page title={number} name={number} kind={t('record.hull')}>
      <p>
        <Link to="/own-hulls">{t('ownHulls.title')}</Link>
      </p>
      <Answer what={t('own.theHull', { number })} query={query}>
        {(hull) => (
          <>
            <Papers hull={hull} />
            <OwnClaims number={hull.number} />
            <OwnRepairs number={hull.number} />
          </>
        )}
      </Answer>
    </Page>
  );
};

const Papers = ({ hull: { number, hin, model, certificate } }: { readonly hull: OwnHull }) => {
  const { t } = useWords();
  return (
    <Facts
      rows={[
        [t('record.hin'), hin === null ? t('record.notYet') : <span className="n">{hin}</span>],
        [t('record.model'), <span className="n">{model}</span>],
        [t('certificate.certificates'), <OwnCertificateCell number={number} certificate={certificate} />],
        [
          t('hulls.buildRecord'),
          <a href={paperPath('/api/own-hulls/:number/build-record.pdf', { number })}>{t('hulls.buildRecord')}</a>,
        ],
      ]}
    />
  );
};
