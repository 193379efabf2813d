import { useEffect, type ReactNode } from 'react';

interface StationPageProps {
  /** In the title of the window. */
  readonly title: string;
  /** What one works on, never broken or shortened, or the name of the page. */
  readonly name: string;
  /** The task, above it. */
  readonly over?: ReactNode;
  /** The layer, gauge or the like, beside it. */
  readonly side?: ReactNode;
  readonly isCode?: boolean;
  readonly children: ReactNode;
}

/** One task of the station. Its heading is where reading begins. */
export const StationPage = ({ title, name, over, side, isCode = false, children }: StationPageProps) => {
  useEffect(() => {
    document.title = `${title} · Hull Record`;
  }, [title]);
  return (
    <>
      <div className="st-top">
        <div>
          {over === undefined ? null : <p className="soft">{over}</p>}
          <h1 tabIndex={-1} className={isCode ? 'n' : undefined}>
            {name}
          </h1>
        </div>
        {side === undefined ? null : <div className="st-side">{side}</div>}
      </div>
      {children}
    </>
  );
};

/** The acts of a task, at the bottom where the thumb is; the first is the one thing to do. */
export const Acts = ({ children }: { readonly children: ReactNode }) => <div className="st-acts">{children}</div>;
