/** For which device the file is, by its name and when its last file came; and whether it gets what it lacks or everything. */
import { dayOf } from '#core/calendar.ts';
import { Choice } from '#parts/Choice.tsx';
import { deviceZone, now } from '#store/device.ts';
import type { Partner } from '#store/handOver/handOver.ts';
import { en as words } from '#words/handOver.ts';
import { formatDayFrom } from '#words/quantity.ts';
import { type Chosen, newDevice } from './useSendChoice.ts';

export interface PartnerFieldProps {
  readonly partners: readonly Partner[];
  readonly choice: Chosen;
  readonly chosen: Partner | undefined;
  readonly onChange: (changed: Partial<Chosen>) => void;
}

const hintOf = ({ lastFileAt, lacksCount, aheadCount }: Partner): string => {
  const zone = deviceZone();
  return words.partnerHint(formatDayFrom(dayOf(now(), zone), dayOf(lastFileAt, zone)), lacksCount, aheadCount);
};

export function PartnerField({ partners, choice, chosen, onChange }: PartnerFieldProps) {
  if (partners.length === 0) return <p>{words.noPartner}</p>;
  return (
    <>
      <Choice
        name="partner"
        label={words.partner}
        options={[
          ...partners.map((each) => ({
            value: each.writer,
            label: words.partnerName(each.deviceName),
            hint: hintOf(each),
          })),
          { value: newDevice, label: words.newDevice, hint: words.newDeviceHint },
        ]}
        value={choice.partner}
        onChange={(partner) => onChange({ partner })}
      />
      {chosen && (
        <Choice
          name="part"
          label={words.part}
          options={[
            {
              value: 'lacking',
              label: words.parts.lacking.label(chosen.lacksCount),
              hint: words.parts.lacking.hint,
            },
            { value: 'everything', ...words.parts.everything },
          ]}
          value={choice.part}
          onChange={(part) => onChange({ part })}
        />
      )}
    </>
  );
}
