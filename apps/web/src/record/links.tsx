import { Link } from '@tanstack/react-router';

interface ToProps {
  readonly to: string;
}

/** A link to a hull, by its number. */
export const HullLink = ({ to: number }: ToProps) => (
  <Link to="/hulls/$number" params={{ number }}>
    {number}
  </Link>
);

/** A link to a lot, by its code. */
export const LotLink = ({ to: lot }: ToProps) => (
  <Link to="/lots/$lot" params={{ lot }}>
    {lot}
  </Link>
);
