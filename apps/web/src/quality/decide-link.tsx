import { Link } from '@tanstack/react-router';

interface DecideLinkProps {
  readonly about: string;
  /** What is to be done about it: a disposition of a defect, an answer, an acceptance, a rework. */
  readonly act: string;
  /** What it is, as the form names it. */
  readonly name: string;
  readonly words: string;
}

/** Opens the form for one thing above the list. */
export const DecideLink = ({ about, act, name, words }: DecideLinkProps) => (
  <Link to="/quality" search={{ about, act, name }} aria-label={`${words}: ${name}`}>
    {words}
  </Link>
);
