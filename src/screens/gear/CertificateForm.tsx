/**
 * Office, with the certificate that came back with the flow meter: its day, when the next is due, by whom, the lines it gives, and a
 * picture of it. Afterwards flow checks from its day on are held to it, and none before.
 */
import { DateField } from '#parts/DateField.tsx';
import { errorOf } from '#parts/ErrorSummary.tsx';
import { PairLines, TubeLines } from '#parts/MeterLines.tsx';
import { TakePhoto } from '#parts/Pictures.tsx';
import { TextField } from '#parts/TextField.tsx';
import type { MeterRecord } from '#records/book.ts';
import { happenedNow } from '#store/device.ts';
import { usePictures } from '#store/hooks/usePhotos.ts';
import { newFact } from '#store/newFact.ts';
import { en } from '#words/gearScreen.ts';
import { type CertificateText, dueOf, emptyCertificate, readCertificate } from './certificateText.ts';
import { GearForm } from './GearForm.tsx';
import type { GearHere } from './gearHere.ts';

const words = en.certificate;
const noPhotos: readonly never[] = [];

export function CertificateForm({ here }: { readonly here: GearHere<MeterRecord> }) {
  const { record, today, zone, by, title } = here;
  const pictures = usePictures(noPhotos);
  const keep = () =>
    pictures.choice.handIn({
      recordKey: record.key,
      of: 'certificate',
      title,
      entry: { happened: happenedNow(zone), by },
    });
  return (
    <GearForm<CertificateText>
      here={here}
      name="certificate"
      heading={words.enterHeading(here.name)}
      action={words.save}
      blank={emptyCertificate(record)}
      fieldByName={{ certificateOn: 'certificate-on', dueOn: 'certificate-due', by: 'certificate-by' }}
      onWritten={keep}
      build={(typed, read, entry) => {
        const body = readCertificate(read, typed, record, today);
        return body === null ? null : newFact('certificateEntered.v1', body, entry);
      }}
    >
      {(typed, change, errors) => {
        const lines = {
          value: typed.lines,
          onChange: (changed: CertificateText['lines']) => change({ lines: changed }),
          errors,
        };
        return (
          <>
            <p>{words.intro}</p>
            <DateField
              name="certificate-on"
              label={words.on}
              value={typed.on}
              today={today}
              onChange={(on) => change({ on })}
              error={errorOf(errors, 'certificate-on')}
            />
            <DateField
              name="certificate-due"
              label={words.dueOn}
              hint={words.dueHint}
              value={dueOf(typed, today)}
              today={today}
              onChange={(due) => change({ due, dueTyped: true })}
              error={errorOf(errors, 'certificate-due')}
            />
            <TextField
              name="certificate-by"
              label={words.who}
              value={typed.by}
              onChange={(who) => change({ by: who })}
              error={errorOf(errors, 'certificate-by')}
            />
            {record.meterKind === 'rotameter' ? <TubeLines {...lines} /> : <PairLines {...lines} />}
            <TakePhoto held={pictures} name="certificate-photo" of="certificate" hint={words.picture} />
          </>
        );
      }}
    </GearForm>
  );
}
