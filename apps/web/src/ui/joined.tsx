import { Fragment, type ReactNode } from 'react';

interface JoinedProps {
  readonly children: readonly ReactNode[];
  readonly by: string;
}

/** Children with a separator between each two. */
export const Joined = ({ children, by }: JoinedProps) =>
  children.map((child, i) => (
    <Fragment key={i}>
      {i === 0 ? null : by}
      {child}
    </Fragment>
  ));
