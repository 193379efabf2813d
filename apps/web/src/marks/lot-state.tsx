import { Term } from '../words/text.js';
import { mark, type Shape } from './mark.js';

const SHAPES: Readonly<Record<string, Shape>> = {
  released: 'inside',
  quarantined: 'tape',
  held: 'tape',
  rejected: 'stopped',
};

/** The state of a lot. */
export const LotState = ({ state }: { readonly state: string }) => (
  <span className="nb">{mark(SHAPES[state] ?? 'none', <Term word={state} />)}</span>
);
