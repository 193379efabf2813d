import { useQuery } from '@tanstack/react-query';
import { getRouteApi } from '@tanstack/react-router';
import type { Redactable } from '@hull-record/contracts';
import { redactableQuery } from '../api/queries-of-owners.js';
import { AfterSaleWords } from '../asked/after-sale-words.js';
import { Answer } from '../asked/answer.js';
import { HullLink } from '../record/links.js';
import { Page, Section } from '../ui/page.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { RedactablePhoto } from './redactable-photo.js';
import { RedactableText } from './redactable-text.js';

const route = getRouteApi('/owners/hulls/$hull');

/** Freely written texts and photos of a hull that may show or name somebody, to be redacted. */
export const RedactablePage = () => (
  <AfterSaleWords>
    <All />
  </AfterSaleWords>
);

const All = () => {
  const { t } = useWords();
  const { hull } = route.useParams();
  const query = useQuery(redactableQuery(hull));
  return (
    <Page title={t('owners.redactable')} name={t('owners.redactable')}>
      <p>
        <HullLink to={hull} />
      </p>
      <p className="lead">{t('owners.redactableIs')}</p>
      <Answer what={t('owners.redactable')} query={query}>
        {(all) => <Listed of={all} />}
      </Answer>
    </Page>
  );
};

const Listed = ({ of: { texts, photos, keptBecause } }: { readonly of: Redactable }) => {
  const { t } = useWords();
  return (
    <>
      <p>
        {t(keptBecause === null ? 'owners.originalGoes' : 'owners.originalStays')}{' '}
        {keptBecause === null ? null : <Said text={keptBecause} />}
      </p>
      <Section name={t('owners.texts')}>
        {texts.length === 0 ? <p className="soft">{t('owners.noTexts')}</p> : null}
        <ul className="plain redactable">
          {texts.map((text) => (
            <RedactableText key={`${text.kind} ${text.of}`} text={text} kept={keptBecause !== null} />
          ))}
        </ul>
      </Section>
      <Section name={t('owners.photos')}>
        {photos.length === 0 ? <p className="soft">{t('owners.noPhotos')}</p> : null}
        <ul className="plain redactable">
          {photos.map((photo) => (
            <RedactablePhoto key={photo.id} photo={photo} kept={keptBecause !== null} />
          ))}
        </ul>
      </Section>
    </>
  );
};
