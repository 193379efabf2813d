import { Link } from '@tanstack/react-router';

/** A link to what the store knows of a lot. */
export const StoreLotLink = ({ to: lot }: { readonly to: string }) => (
  <Link to="/store/lots/$lot" params={{ lot }}>
    {lot}
  </Link>
);
