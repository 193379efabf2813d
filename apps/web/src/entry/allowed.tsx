import type { RouteName } from '@hull-record/contracts';
import type { ReactNode } from 'react';
import { rolesFor, useAsksWhoIsHere, useMay } from '../api/use-may.js';
import { useWords } from '../words/use-words.js';

interface AllowedProps {
  readonly to: RouteName;
  /** What it is, such as "Receive a lot". */
  readonly what: string;
  readonly children: ReactNode;
}

/** Something that is offered to those who may do it; to others it says who may, once it is known who they are. */
export const Allowed = ({ to, what, children }: AllowedProps) => {
  const { t, term } = useWords();
  const asks = useAsksWhoIsHere();
  if (useMay()(to)) return children;
  if (asks) return null;
  return (
    <p className="note soft">
      {t('entry.forRoles', {
        what,
        roles: rolesFor(to)
          .map((role) => term(role))
          .join(', '),
      })}
    </p>
  );
};
