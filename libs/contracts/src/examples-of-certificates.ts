import { told } from './example-parts.js';

/** One request for each route about certificates. All of it is invented. */
export const EXAMPLES_OF_CERTIFICATES = {
  issueCertificate: told({ enteredBy: 'QUA-01' }),
  withdrawCertificate: told({ enteredBy: 'QUA-01', reason: 'The model was printed wrong.' }),
  checkCertificate: { code: '7KX4M2PD93WAHT5E0Q8R6V1Z3B' },
};
