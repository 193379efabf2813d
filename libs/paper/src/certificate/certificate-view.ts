/** What a certificate prints, worded. */
export interface CertificateView {
  readonly plant: string;
  readonly number: string;
  readonly issue: number;
  readonly issuedOn: string;
  readonly hull: string;
  readonly hin: string | null;
  readonly model: string;
  readonly released: string;
  readonly parts: readonly {
    readonly part: string;
    readonly kind: string;
    readonly layers: readonly {
      readonly name: string;
      readonly materials: string;
      readonly made: string;
      readonly readings: string;
    }[];
  }[];
  readonly repaired: readonly string[];
  readonly concessions: readonly string[];
  /** What did not find room, a sentence each. */
  readonly leftOut: readonly string[];
  /** What the paper is and what it is not. */
  readonly statement: string;
}

/** What a certificate carries beside its words. */
export interface CertificateSeal {
  /** Address that the QR code leads to. */
  readonly address: string;
  /** The page to type the code on. */
  readonly page: string;
  /** The code as people type it. */
  readonly code: string;
  /** A file that proves the words: embedded in the PDF. */
  readonly attached: { readonly name: string; readonly content: Buffer; readonly about: string };
}
