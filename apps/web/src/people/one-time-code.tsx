import { Moment } from '../words/moments.js';
import { Said, Text } from '../words/text.js';

interface OneTimeCodeProps {
  readonly code: { readonly code: string; readonly until: string; readonly caution?: string | undefined };
}

/** A code that is shown this once, large enough to be copied by hand. */
export const OneTimeCode = ({ code: { code, until, caution } }: OneTimeCodeProps) => (
  <div className="once">
    <p className="n secret">{code}</p>
    <p>
      <Text of="people.codeOnce" with={{ until: <Moment at={until} /> }} />
    </p>
    {caution === undefined ? null : (
      <p className="caution">
        <Said text={caution} />
      </p>
    )}
  </div>
);
