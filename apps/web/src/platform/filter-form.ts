import { h, type Child } from './dom.js';

/** A field of a form: a name for it in the address, what it is, and its control. */
export interface Field {
  readonly name: string;
  readonly label: string;
  readonly control: HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;
  readonly hint?: string;
}

/** A form that narrows what is shown; `chosen` is told the values by name each time it is sent. */
export const filterForm = (
  button: string,
  fields: readonly Field[],
  chosen: (values: Readonly<Record<string, string>>) => void,
): HTMLFormElement => {
  const form = h('form', { class: 'filter' }, fields.map(labelled), h('button', { class: 'btn' }, button));
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    chosen(Object.fromEntries(fields.map(({ name, control }) => [name, control.value.trim()])));
  });
  return form;
};

const labelled = ({ name, label, control, hint }: Field): Child => {
  control.id = `field-${name}`;
  control.name = name;
  if (hint !== undefined) control.setAttribute('aria-describedby', `hint-${name}`);
  return h(
    'div',
    { class: 'field' },
    h('label', { for: control.id }, label),
    control,
    hint === undefined ? null : h('span', { class: 'note soft', id: `hint-${name}` }, hint),
  );
};

/** A line to type into. */
export const line = (value: string, attributes: Readonly<Record<string, string>> = {}): HTMLInputElement =>
  h('input', { type: 'text', value, autocomplete: 'off', spellcheck: 'false', maxlength: '60', ...attributes });

/** A choice; the first option stands for no choice. */
export const choice = (
  value: string,
  options: readonly (readonly [value: string, words: string])[],
  none = 'any',
): HTMLSelectElement => {
  const select = h(
    'select',
    {},
    [['', none] as const, ...options].map(([each, words]) => h('option', { value: each }, words)),
  );
  select.value = value;
  return select;
};
