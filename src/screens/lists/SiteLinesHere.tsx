/** The lines of a site, with the states to choose from. */
import { SiteLines, type SiteText } from '#parts/SiteLines.tsx';
import { states } from '#reference/states.ts';
import type { LinesProps } from './registers.ts';

export function SiteLinesHere({ value, onChange, errors }: LinesProps<SiteText>) {
  return (
    <SiteLines
      value={value}
      onChange={onChange}
      errors={errors}
      states={states().map(({ code, name }) => ({ value: code, label: name }))}
    />
  );
}
