import type { ReactNode } from 'react';

interface FoldProps {
  readonly summary: ReactNode;
  readonly children: ReactNode;
  readonly open?: boolean;
  readonly className?: string;
}

/** Something that unfolds; the browser's own, so that a search in the page finds what is folded. */
export const Fold = ({ summary, children, open, className }: FoldProps) => (
  <details open={open} className={className}>
    <summary>{summary}</summary>
    {children}
  </details>
);
