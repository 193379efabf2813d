import type { Whereabouts as Where } from '@hull-record/contracts';
import { Day } from '../words/moments.js';
import { Term } from '../words/text.js';

/** Where a hull is now and since when. */
export const Whereabouts = ({ now: { what, dealer, since } }: { readonly now: Where }) => (
  <>
    <Term word={what} />
    {dealer === null ? null : ` ${dealer}`}, <Day at={since} />
  </>
);
