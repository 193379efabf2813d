import { useState } from 'react';
import { fieldErrors } from '../api/problem.js';
import { Button } from '../ui/button.js';
import { Choice } from '../ui/choice.js';
import { Form } from '../ui/form.js';
import { TextField } from '../ui/text-field.js';
import { useWords } from '../words/use-words.js';

interface FieldOf<Name extends string> {
  /** Its name in the address. */
  readonly name: Name;
  readonly label: string;
  readonly hint?: string;
  readonly kind: 'text' | 'percent' | 'mm' | 'day' | 'lines' | 'choice';
  readonly options?: readonly (readonly [value: string, words: string])[];
  readonly none?: string;
  /** Where the service points to when it finds this field wrong: the start of a JSON pointer. */
  readonly pointer?: string;
}

/** A field of a form, by its name in the address. */
export type Field<Name extends string = string> = FieldOf<Name>;
/** What stands in the fields of a form, by name. */
export type Chosen<Name extends string = string> = Readonly<Record<Name, string>>;

interface FilterFormProps<Name extends string> {
  readonly button: string;
  readonly fields: readonly Field<Name>[];
  /** What stands in the address. */
  readonly values: Chosen<Name>;
  readonly onChosen: (values: Chosen<Name>) => void;
  /** What went wrong with what was chosen last. */
  readonly error?: unknown;
}

/** A form that narrows what is shown. It follows the address, so that going back shows what was asked then. */
export const FilterForm = <Name extends string>({ button, fields, values, onChosen, error }: FilterFormProps<Name>) => {
  const { t } = useWords();
  const address = JSON.stringify(values);
  const [typed, setTyped] = useState({ address, values });
  if (typed.address !== address) setTyped({ address, values });
  const put = (name: Name, value: string): void =>
    setTyped((before) => ({ ...before, values: { ...before.values, [name]: value } }));
  const trimmed = (): Chosen<Name> =>
    Object.fromEntries(fields.map(({ name }) => [name, typed.values[name].trim()])) as Record<Name, string>;
  return (
    <Form onSubmit={() => onChosen(trimmed())} errors={errorsByName(fields, error)}>
      {fields.map(({ kind, name, options = [], none, ...field }) => {
        const same = {
          name,
          label: field.label,
          value: typed.values[name],
          onChange: (value: string) => put(name, value),
        };
        if (kind !== 'choice') return <TextField key={name} kind={kind} hint={field.hint} {...same} />;
        return <Choice key={name} options={options} none={none ?? t('app.any')} {...same} />;
      })}
      <Button type="submit">{button}</Button>
    </Form>
  );
};

const errorsByName = (fields: readonly Field[], error: unknown): Readonly<Record<string, string>> =>
  Object.fromEntries(
    fields.flatMap(({ name, pointer }) => {
      if (pointer === undefined) return [];
      const wrong = fieldErrors(error).filter((each) => each.pointer.startsWith(pointer));
      return wrong.length === 0 ? [] : [[name, wrong.map(({ detail }) => detail).join(' ')]];
    }),
  );
