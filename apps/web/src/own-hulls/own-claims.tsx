import type { AddClaimPhoto, OwnClaim } from '@hull-record/contracts';
import { DEFECT_KINDS } from '@hull-record/trade';
import { useQuery } from '@tanstack/react-query';
import { post } from '../api/ask.js';
import { postPhoto } from '../api/post-photo.js';
import { ownClaimsQuery } from '../api/queries-of-own.js';
import { Answer } from '../asked/answer.js';
import { Allowed } from '../entry/allowed.js';
import { given } from '../entry/entry-field.js';
import { RecordForm } from '../entry/record-form.js';
import { mark } from '../marks/mark.js';
import { Fold } from '../ui/fold.js';
import { Section } from '../ui/page.js';
import { CalendarDay } from '../words/moments.js';
import { Said } from '../words/text.js';
import { useWords } from '../words/use-words.js';
import { AddPhoto } from './add-photo.js';

/** Claims on an own hull with their pictures and what was decided, and a way to file one. */
export const OwnClaims = ({ number }: { readonly number: string }) => {
  const { t } = useWords();
  const query = useQuery(ownClaimsQuery(number));
  return (
    <Section name={t('own.claims')}>
      <Answer what={t('own.theClaims')} query={query}>
        {(claims) => (
          <>
            {claims.length === 0 ? <p className="soft">{t('own.noClaims')}</p> : null}
            <ul className="plain">
              {claims.map((claim) => (
                <li key={claim.id}>
                  <Claim number={number} claim={claim} />
                </li>
              ))}
            </ul>
          </>
        )}
      </Answer>
      <Allowed to="fileOwnClaim" what={t('own.file')}>
        <Fold summary={t('own.file')}>
          <FileIt number={number} />
        </Fold>
      </Allowed>
    </Section>
  );
};

const Claim = ({ number, claim }: { readonly number: string; readonly claim: OwnClaim }) => {
  const { t, term, kind } = useWords();
  const { decision, photosAsked } = claim;
  return (
    <>
      <h3>
        <span className="n">{claim.mark}</span> {kind(claim.kind)}, <CalendarDay at={claim.reportedOn} />
      </h3>
      <p>
        <Said text={claim.symptoms} />
      </p>
      <p>{decision === null ? t('own.notDecided') : t('own.decided', { decision: term(decision.decision) })}</p>
      <p>
        {photosAsked.length === 0
          ? mark('made', t('claims.photosWhole'))
          : mark('to come', t('claims.photosMissing', { missing: photosAsked.map(term).join(', ') }))}
      </p>
      <Allowed to="addOwnClaimPhoto" what={t('claims.addPhoto')}>
        <AddPicture number={number} claim={claim.id} next={photosAsked[0] ?? 'other'} />
      </Allowed>
    </>
  );
};

const FileIt = ({ number }: { readonly number: string }) => {
  const { t, kind } = useWords();
  return (
    <RecordForm
      groups={[
        {
          fields: [
            {
              ...{ name: 'kind', label: t('claims.kind'), kind: 'choice' },
              options: DEFECT_KINDS.map(({ code }) => [code, kind(code)]),
            },
            { name: 'reportedOn', label: t('claims.reportedOn'), kind: 'day' },
            { name: 'symptoms', label: t('claims.symptoms'), kind: 'words', hint: t('claims.symptomsHint') },
            { name: 'reference', label: t('claims.reference'), hint: t('claims.referenceHint') },
          ],
        },
      ]}
      button={t('own.fileDo')}
      send={(said, envelope) => {
        const {
          kind: of,
          reportedOn,
          symptoms,
        } = {
          ...{ kind: said('kind'), reportedOn: said('reportedOn'), symptoms: said('symptoms') },
        };
        const more = given('reference', said('reference'));
        return post(
          '/api/own-hulls/:number/claims',
          { number },
          { ...envelope, kind: of, reportedOn, symptoms, ...more },
        );
      }}
      done={({ result }) => <p>{t('own.filed', { mark: result.mark })}</p>}
    >
      {() => <p className="note soft">{t('claims.noPersonal')}</p>}
    </RecordForm>
  );
};

interface AddPictureProps {
  readonly number: string;
  readonly claim: string;
  /** The first picture that is asked for and not there. */
  readonly next: string;
}

const AddPicture = ({ number, claim, next }: AddPictureProps) => {
  const { t, term } = useWords();
  return (
    <AddPhoto
      button={t('own.addPicture', { shows: term(next) })}
      send={(_, envelope, photo) =>
        postPhoto(
          '/api/own-hulls/:number/claims/:claim/photos',
          { number, claim },
          { ...envelope, shows: next as AddClaimPhoto['shows'] },
          photo,
        )
      }
    />
  );
};
