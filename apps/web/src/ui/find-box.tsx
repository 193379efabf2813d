import { useState } from 'react';

interface FindBoxProps {
  readonly label: string;
  readonly hint: string;
  readonly onFind: (words: string) => void;
}

/** A line to look for something from anywhere; it is emptied once it was sent. */
export const FindBox = ({ label, hint, onFind }: FindBoxProps) => {
  const [words, setWords] = useState('');
  return (
    <form
      role="search"
      className="find"
      onSubmit={(event) => {
        event.preventDefault();
        if (words.trim() === '') return;
        onFind(words.trim());
        setWords('');
      }}
    >
      <input
        type="search"
        aria-label={label}
        placeholder={hint}
        value={words}
        maxLength={60}
        autoComplete="off"
        spellCheck="false"
        onChange={(event) => setWords(event.target.value)}
      />
    </form>
  );
};
