/** Each set as an entry: its limits with sign and dates, what was read of it, what was not, and where. */
import type { ReactNode } from 'react';
import { dayOf } from '#core/calendar.ts';
import { besideLimitsOn } from '#reference/besideSet.ts';
import { allLimitSets, besideSets, setOn } from '#reference/limits.ts';
import { isCitable, type ReadSource } from '#reference/source.ts';
import { deviceZone, now } from '#store/device.ts';
import { sets, en as words } from '#words/limitsBeside.ts';
import { LimitLine, OfTask } from './LimitLine.tsx';
import styles from './rules.module.css';

const today = (): string => dayOf(now(), deviceZone());

export function RuleEntries() {
  return (
    <section className={styles.sets}>
      <h2>{words.held}</h2>
      {allLimitSets().map((file) => {
        const set = setOn(today(), file);
        const { id, document, jurisdiction, heldComplete, extendedShift, amendments } = set;
        return (
          <Entry
            key={id}
            id={id}
            name={document}
            over={`${jurisdiction}. ${heldComplete ? words.complete : words.figuresOnly}.`}
            sources={[set.actionLevel.source, set.pel.source, ...amendments.map(({ source }) => source)]}
          >
            <LimitLine which="actionLevel" limit={set.actionLevel} />
            <LimitLine which="pel" limit={set.pel} />
            {[...set.exceptions, ...set.workLimits].map((one) => (
              <OfTask key={one.key} taskLimit={one} on={today()} />
            ))}
            {extendedShift.kind === 'doseOverHours' && <p>{words.longShift(extendedShift.dose.value)}</p>}
            {amendments.length > 0 && (
              <ul className={styles.plain}>
                {amendments.map(({ on, what }) => (
                  <li key={on}>{words.amended(on, what)}</li>
                ))}
              </ul>
            )}
          </Entry>
        );
      })}
    </section>
  );
}

export function BesideEntries() {
  return (
    <section className={styles.sets}>
      <h2>{words.beside}</h2>
      <p className={styles.quiet}>{words.besideHint}</p>
      {besideSets().map((file) => {
        const limits = besideLimitsOn(today(), file);
        return (
          <Entry
            key={file.id}
            id={file.id}
            name={file.document}
            over={`${file.jurisdiction}, ${words.kind[file.kind]}`}
            sources={[...limits, ...file.differs].map(({ source }) => source)}
          >
            {limits.length === 0 && <p>{words.besideNone}</p>}
            {limits.map((limit) => (
              <LimitLine key={limit.which} which={limit.which} limit={limit} beside />
            ))}
            {file.differs.length > 0 && (
              <ul className={styles.plain} aria-label={words.differs}>
                {file.differs.map(({ key }) => (
                  <li key={key}>{words.difference[key]}</li>
                ))}
              </ul>
            )}
          </Entry>
        );
      })}
      <p className={styles.quiet}>{words.leftOut}</p>
    </section>
  );
}

interface EntryProps {
  readonly id: string;
  readonly name: string;
  readonly over: string;
  readonly sources: readonly ReadSource[];
  readonly children: ReactNode;
}

function Entry({ id, name, over, sources, children }: EntryProps) {
  const cited = [
    ...new Map(sources.filter(isCitable).map((one) => [`${one.title} ${one.section ?? ''}`, one])).values(),
  ];
  const said = sets[id];
  return (
    <article className={styles.set}>
      <h3>{name}</h3>
      <p className={styles.quiet}>{over}</p>
      {children}
      {said !== undefined && (
        <>
          <p>
            <strong>{words.verified}:</strong> {said.verified}
          </p>
          <p>
            <strong>{words.notVerified}:</strong> {said.notVerified}
          </p>
        </>
      )}
      <details>
        <summary className={styles.summary}>
          {words.sources}
          <span className={styles.heard}>: {name}</span>
        </summary>
        <ul className={styles.plain}>
          {cited.map((source) => (
            <li key={`${source.title} ${source.section ?? ''}`}>
              {[source.title, source.section, source.edition].filter(Boolean).join(', ')}
              {source.mark === 'READ-2' && ` (${words.second})`}
              {source.url !== undefined && <span className={styles.address}>{source.url}</span>}
            </li>
          ))}
        </ul>
      </details>
    </article>
  );
}
