import { useId } from 'react';

interface TickProps {
  readonly name: string;
  readonly label: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
}

/** Something that is so, or is not. */
export const Tick = ({ name, label, on, onChange }: TickProps) => {
  const id = useId();
  return (
    <div className="tick">
      <input id={id} name={name} type="checkbox" checked={on} onChange={(event) => onChange(event.target.checked)} />
      <label htmlFor={id}>{label}</label>
    </div>
  );
};
