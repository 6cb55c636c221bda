/** Method, reporting limit, flow and cassettes; the same figures lead to the question whether such a sample can prove anything. */
import { errorOf } from '#parts/ErrorSummary.tsx';
import { Line, Lines } from '#parts/Lines.tsx';
import { QuantityField } from '#parts/QuantityField.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TextField } from '#parts/TextField.tsx';
import { methods } from '#reference/methods.ts';
import { en } from '#words/planScreen.ts';
import type { PlanFields } from './fields.ts';
import styles from './plan.module.css';
import { provePath } from './provePath.ts';

const words = en.how;
const open = '-';

export function HowLines({ draft, onChange, errors }: PlanFields) {
  return (
    <section className={styles.part}>
      <h2>{words.heading}</h2>
      <SelectField
        name="method"
        label={words.method}
        options={[
          { value: open, label: words.methodOpen },
          ...methods().map(({ id, title }) => ({ value: id, label: title })),
        ]}
        value={draft.methodId ?? open}
        onChange={(id) => onChange({ methodId: id === open ? null : id })}
      />
      <QuantityField
        name="limit"
        label={words.reportingLimit}
        unit="µg"
        value={draft.reportingLimit}
        onChange={(reportingLimit) => onChange({ reportingLimit })}
        error={errorOf(errors, 'limit')}
      />
      <QuantityField
        name="flow"
        label={words.flow}
        unit="L/min"
        value={draft.flow}
        onChange={(flow) => onChange({ flow })}
        error={errorOf(errors, 'flow')}
      />
      <TextField
        name="cassettes"
        label={words.cassettes}
        hint={words.cassettesHint}
        kind="digits"
        value={draft.cassettes}
        onChange={(cassettes) => onChange({ cassettes })}
        error={errorOf(errors, 'cassettes')}
      />
      <Lines>
        <Line to={provePath({ ...draft, limit: draft.reportingLimit })}>{words.toProve}</Line>
      </Lines>
      <TextField
        name="remark"
        label={words.remark}
        value={draft.remark}
        onChange={(remark) => onChange({ remark })}
        error={errorOf(errors, 'remark')}
      />
    </section>
  );
}
