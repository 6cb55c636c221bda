/** A site that is written down for the first time: its name, whose rule governs, indoors or outdoors, altitude, time zone. */
import { isZone } from '#core/calendar.ts';
import { en as words } from '#words/site.ts';
import { Choice } from './Choice.tsx';
import { errorOf, type FieldError } from './ErrorSummary.tsx';
import type { FieldReader } from './fieldReader.ts';
import { QuantityField } from './QuantityField.tsx';
import { SelectField, type SelectOption } from './SelectField.tsx';
import { TextField } from './TextField.tsx';

export interface SiteText {
  readonly name: string;
  readonly stateCode: string;
  readonly setting: 'indoors' | 'outdoors' | null;
  readonly altitude: string;
  readonly zone: string;
}

export const emptySite = (zone: string): SiteText => ({ name: '', stateCode: '', setting: null, altitude: '', zone });

/** From the shore of the Dead Sea to the highest summit; wider than any site. */
const altitudeRange = { least: -500, most: 9000, negative: true, optional: true } as const;

export function readSite(read: FieldReader, text: SiteText) {
  const before = read.errors.length;
  const name = read.text('site-name', words.name, text.name);
  const stateCode = read.chosen('site-state', words.state, text.stateCode);
  const setting = read.chosen('site-setting', words.setting, text.setting);
  const altitudeM = read.quantity('site-altitude', words.altitude, 'm', text.altitude, altitudeRange);
  const zone = read.text('site-zone', words.zone, text.zone);
  if (zone !== null && !isZone(zone)) read.add('site-zone', words.zoneUnknown);
  if (read.errors.length > before || name === null || stateCode === null || setting === null || zone === null)
    return null;
  return { name, stateCode, setting, altitudeM, zone };
}

export interface SiteLinesProps {
  readonly value: SiteText;
  readonly onChange: (text: SiteText) => void;
  readonly errors: readonly FieldError[];
  readonly states: readonly SelectOption[];
}

export function SiteLines({ value, onChange, errors, states }: SiteLinesProps) {
  return (
    <>
      <TextField
        name="site-name"
        label={words.name}
        hint={words.nameHint}
        value={value.name}
        onChange={(name) => onChange({ ...value, name })}
        error={errorOf(errors, 'site-name')}
      />
      <SelectField
        name="site-state"
        label={words.state}
        hint={words.stateHint}
        options={states}
        value={value.stateCode}
        onChange={(stateCode) => onChange({ ...value, stateCode })}
        error={errorOf(errors, 'site-state')}
      />
      <Choice
        name="site-setting"
        label={words.setting}
        options={words.settings}
        value={value.setting}
        onChange={(setting) => onChange({ ...value, setting })}
        error={errorOf(errors, 'site-setting')}
      />
      <QuantityField
        name="site-altitude"
        label={words.altitude}
        unit="m"
        kind="signed"
        hint={words.altitudeHint}
        value={value.altitude}
        onChange={(altitude) => onChange({ ...value, altitude })}
        error={errorOf(errors, 'site-altitude')}
      />
      <TextField
        name="site-zone"
        label={words.zone}
        hint={words.zoneHint}
        value={value.zone}
        onChange={(zone) => onChange({ ...value, zone })}
        error={errorOf(errors, 'site-zone')}
      />
    </>
  );
}
