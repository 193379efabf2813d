import { useEffect, useId, type ReactNode } from 'react';

interface PageProps {
  /** Its name in the title of the window. */
  readonly title: string;
  readonly name: ReactNode;
  /** The kind of thing, above a name that is a code. */
  readonly kind?: string;
  readonly children: ReactNode;
}

/** One page. Its heading is where reading begins: it takes the focus when a link led here. */
export const Page = ({ title, name, kind, children }: PageProps) => {
  useEffect(() => {
    document.title = `${title} · Hull Record`;
  }, [title]);
  return (
    <>
      <h1 tabIndex={-1}>
        {kind === undefined ? null : <small>{kind} </small>}
        <span className={kind === undefined ? undefined : 'n'}>{name}</span>
      </h1>
      {children}
    </>
  );
};

interface SectionProps {
  readonly name: string;
  readonly children: ReactNode;
}

/** A part of a page under a heading of its own. */
export const Section = ({ name, children }: SectionProps) => {
  const id = useId();
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{name}</h2>
      {children}
    </section>
  );
};

/** What to say where there is nothing, with what to do first. */
export const Empty = ({ children }: { readonly children: ReactNode }) => <p className="empty">{children}</p>;

interface FactsProps {
  readonly rows: readonly (readonly [name: string, value: ReactNode])[];
}

/** Names and values, each name above its value; values that are null are left out. */
export const Facts = ({ rows }: FactsProps) => (
  <dl className="facts">
    {rows
      .filter(([, value]) => value !== null)
      .map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
  </dl>
);
