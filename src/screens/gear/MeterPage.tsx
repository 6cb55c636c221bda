/** A flow meter: its certificates, which of them is in force today, what it reads and what is true. The newer certificate is entered here. */
import { type CertificateSaid, certificateInForce, certificateOfEntry } from '#findings/gear/certificateInForce.ts';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import type { MeterRecord } from '#records/book.ts';
import { en as gear } from '#words/gear.ts';
import { heldOver } from '#words/gearLines.ts';
import { en as words } from '#words/gearScreen.ts';
import { formatNumber } from '#words/quantity.ts';
import { Beside, Ways } from './Beside.tsx';
import { Doubts } from './Doubts.tsx';
import styles from './gear.module.css';
import { type GearHere, pathOf } from './gearHere.ts';

const text = words.certificate;

export function MeterPage({ here }: { readonly here: GearHere<MeterRecord> }) {
  const { record } = here;
  const kind = gear.meter.kinds[record.meterKind];
  const held = heldOver(record.held);
  return (
    <Page
      heading={here.title}
      over={held === undefined ? kind : `${kind}. ${held}`}
      back="/gear"
      backText={words.toGear}
      action={<MainAction to={`${pathOf(here)}?do=certificate`}>{text.enter}</MainAction>}
      aside={<Beside here={here} />}
    >
      <Doubts here={here} />
      <Certificates here={here} />
      <Ways here={here} />
    </Page>
  );
}

/** Newest first; that of the entry last. */
function Certificates({ here: { record, today } }: { readonly here: GearHere<MeterRecord> }) {
  const entry = certificateOfEntry(record);
  const all: readonly CertificateSaid[] = [
    ...(record.certificates ?? [])
      .toSorted((a, b) => (a.certificateOn < b.certificateOn ? 1 : -1))
      .map((one) => ({ ...one, because: [one.factId] })),
    ...(isNothing(entry) ? [] : [entry]),
  ];
  const inForce = certificateInForce(record, today).because[0];
  return (
    <section className={styles.section}>
      <h2>{text.heading}</h2>
      {all.length === 0 && <p>{text.none}</p>}
      {all.map((one) => (
        <OneCertificate
          key={one.because[0] ?? ''}
          certificate={one}
          inForce={one.because[0] === inForce}
          isTube={record.meterKind === 'rotameter'}
          today={today}
        />
      ))}
    </section>
  );
}

const isNothing = ({ certificateOn, dueOn, pairs }: CertificateSaid): boolean =>
  certificateOn === null && dueOn === null && pairs.length === 0;

interface OneProps {
  readonly certificate: CertificateSaid;
  readonly inForce: boolean;
  readonly isTube: boolean;
  readonly today: string;
}

function OneCertificate({ certificate, inForce, isTube, today }: OneProps) {
  const { certificateOn, dueOn, by, calibrationTemperatureC, calibrationPressureKPa, pairs } = certificate;
  const due = dueOn === null ? text.dueNotSaid : dueOn < today && inForce ? text.overdue(dueOn) : text.due(dueOn);
  const parts = [
    inForce ? text.inForce : text.notYet,
    due,
    ...(by === null ? [] : [text.by(by)]),
    ...(isTube ? [text.conditions(calibrationTemperatureC, calibrationPressureKPa)] : []),
  ];
  return (
    <div className={styles.section}>
      <h3>{certificateOn === null ? text.noDate : text.line(certificateOn)}</h3>
      <p>{parts.join('; ')}</p>
      {pairs.length > 0 && <Pairs pairs={pairs} />}
    </div>
  );
}

function Pairs({ pairs }: Pick<CertificateSaid, 'pairs'>) {
  return (
    <table className={styles.table}>
      <caption>{text.pairs}</caption>
      <thead>
        <tr>
          <th scope="col" className={styles.number}>
            {text.read}
          </th>
          <th scope="col" className={styles.number}>
            {text.true}
          </th>
        </tr>
      </thead>
      <tbody>
        {pairs.map(({ readLPerMin, trueLPerMin }) => (
          <tr key={`${readLPerMin} ${trueLPerMin}`}>
            <td className={styles.number}>{formatNumber(readLPerMin, 'L/min')}</td>
            <td className={styles.number}>{formatNumber(trueLPerMin, 'L/min')}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
