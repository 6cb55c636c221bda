/** The respirator that was worn: one of the list, none, or not noted. Filters are HEPA class, always. */
import { en as words } from '#words/roster.ts';
import { SelectField } from './SelectField.tsx';

type Worn = Parameters<typeof words.respiratorWorn>[0];

/** Picked where nobody noted it. */
export const notNoted = 'notNoted';

export interface RespiratorFieldProps {
  readonly name: string;
  readonly respirators: readonly (Worn & { readonly id: string })[];
  /** Id of a respirator, 'none', or `notNoted`. */
  readonly value: string;
  readonly onChange: (value: string) => void;
}

export function RespiratorField({ name, respirators, value, onChange }: RespiratorFieldProps) {
  return (
    <SelectField
      name={name}
      label={words.respirator}
      options={[
        { value: notNoted, label: words.respiratorNotNoted },
        { value: 'none', label: words.respiratorNone },
        ...respirators.map((each) => ({ value: each.id, label: words.respiratorWorn(each) })),
      ]}
      value={value}
      onChange={onChange}
    />
  );
}
