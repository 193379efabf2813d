import { send } from './send.js';

/**
 * Asks for a paper that is drawn from a body, such as labels, and gives it as a file.
 *
 * @throws Refused, Unreachable
 */
export const postPaper = (path: '/api/labels.pdf', body: object): Promise<Blob> =>
  send<Blob>(path, body, undefined, 'file');
