import { CertificateContent } from '@hull-record/contracts';
import { type BundleVerdict, type TrustedKey, verifyBundle } from '@hull-record/evidence';
import { checkCms } from './check-cms.js';
import { comparePrinted } from './compare-printed.js';
import { readPdf } from './read-certificate.js';
import { signatureIn } from './signature-in.js';

/** What can be said of a certificate with no network and no database. */
export interface CertificateVerdict {
  readonly is: 'genuine' | 'signer not known' | 'broken';
  readonly words: string;
}

/** Name of the embedded file. */
const PROOF = 'certificate-proof.json';

/**
 * Checks the file of a certificate: the signature over all its bytes, the proof that what is embedded stood in the
 * journal of the plant, that the journal names the signer of the file, and that the page prints what is embedded.
 *
 * @param trusted ids of keys of the journal, as somebody has them from the builder
 */
export const verifyCertificate = async (pdf: Buffer, trusted: readonly string[]): Promise<CertificateVerdict> => {
  const signature = signatureIn(pdf);
  if (typeof signature === 'string') return broken(signature);
  const signer = checkCms(signature.cms, signature.signed);
  if (typeof signer === 'string') return broken(signer);
  const { printed, pages, embedded } = await readPdf(pdf);
  const proof = embedded.get(PROOF);
  if (!proof) return broken('Nothing is embedded that proves it.');
  const bundle = verdictOf(proof, trusted);
  if (bundle.is === 'broken') return broken(bundle.words);
  const { result } = bundle.bundle.content as { readonly result?: { readonly content?: unknown } };
  const content = CertificateContent.safeParse(result?.content);
  if (!content.success) return broken('What is embedded is no certificate.');
  if (content.data.signedBy !== signer.fingerprint)
    return broken('The file is signed by another certificate than the one that the journal names.');
  if (pages !== 1) return broken('There is more than one page.');
  const differs = comparePrinted(content.data, printed);
  if (differs !== null) return broken(differs);
  return bundle.is === 'genuine'
    ? { is: 'genuine', words: `Genuine as it was issued. ${bundle.words} ${SAYS_NOT}` }
    : { is: 'signer not known', words: `Consistent with itself, signer not known. ${bundle.words}` };
};

const SAYS_NOT = 'Whether it was replaced or withdrawn since is known to the builder alone: ask at the address on it.';

/** A key is given without a plant: it is trusted for the plant that the proof names. */
const verdictOf = (proof: Buffer, trusted: readonly string[]): BundleVerdict => {
  const alone = verifyBundle(proof, []);
  if (alone.is === 'broken') return alone;
  const { plant } = alone.bundle.head;
  return verifyBundle(
    proof,
    trusted.map((keyId): TrustedKey => ({ plant, keyId: keyId.toLowerCase() })),
  );
};

const broken = (words: string): CertificateVerdict => ({ is: 'broken', words: `Broken: ${words}` });
