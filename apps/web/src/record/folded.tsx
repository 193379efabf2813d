import type { ReactNode } from 'react';
import { Fold } from '../ui/fold.js';

interface FoldedProps {
  readonly items: readonly ReactNode[];
  readonly atMost: number;
  /** What the fold says of the items that it holds. */
  readonly more: (count: number) => string;
}

/** A list whose first items show; the others unfold, so that a long list does not bury what stands below it. */
export const Folded = ({ items, atMost, more }: FoldedProps) => {
  // Unfolding a single one would take as much room as showing it.
  if (items.length <= atMost + 1) return <List items={items} />;
  const rest = items.slice(atMost);
  return (
    <>
      <List items={items.slice(0, atMost)} />
      <Fold summary={more(rest.length)}>
        <List items={rest} />
      </Fold>
    </>
  );
};

const List = ({ items }: { readonly items: readonly ReactNode[] }) => (
  <ul className="plain">
    {items.map((item, i) => (
      <li key={i}>{item}</li>
    ))}
  </ul>
);
