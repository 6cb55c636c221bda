/** The two questions, large, and two that have an answer already. */
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Choice } from '#parts/Choice.tsx';
import { ErrorSummary, errorOf, type FieldError } from '#parts/ErrorSummary.tsx';
import { MainAction } from '#parts/MainAction.tsx';
import { Page } from '#parts/Page.tsx';
import { SelectField } from '#parts/SelectField.tsx';
import { TaskPicker } from '#parts/TaskPicker.tsx';
import { states } from '#reference/states.ts';
import { everydayTasks } from '#reference/tasks.ts';
import { useBookState } from '#store/hooks.ts';
import { en } from '#words/wear.ts';
import { shiftLengths, type WearAnswers, wearPath } from './wearAddress.ts';

const words = en.ask;

export function AskWear({ answers }: { readonly answers: WearAnswers }) {
  const [, go] = useLocation();
  const isOpen = useBookState().kind === 'open';
  const [find, setFind] = useState('');
  const [errors, setErrors] = useState<readonly FieldError[]>([]);
  const change = (part: Partial<WearAnswers>) => go(wearPath({ ...answers, ...part }, false), { replace: true });

  const show = () => {
    const missing: FieldError[] = [];
    if (answers.stateCode === '') missing.push({ field: 'state', text: words.stateMissing });
    if (answers.taskIds.length === 0) missing.push({ field: 'find', text: words.tasksMissing });
    setErrors(missing);
    if (missing.length === 0) go(wearPath(answers, true));
  };

  return (
    <Page
      heading={words.heading}
      back={isOpen ? '/' : '/start'}
      action={<MainAction onClick={show}>{words.action}</MainAction>}
      aside={
        <>
          <Choice
            name="paint"
            label={words.paint}
            options={(['notKnown', 'tested'] as const).map((value) => ({ value, ...words.paints[value] }))}
            value={answers.paint}
            onChange={(paint) => change({ paint })}
          />
          <SelectField
            name="shift"
            label={words.shift}
            options={shiftLengths.map((length, at) => ({
              value: String(length),
              label: at === 0 ? words.upToEight : words.hours(length),
            }))}
            value={String(answers.shiftHours)}
            onChange={(typed) => change({ shiftHours: shiftLengths.find((length) => String(length) === typed) ?? 8 })}
          />
        </>
      }
    >
      <ErrorSummary errors={errors} />
      <p>{words.intro}</p>
      <SelectField
        name="state"
        label={words.state}
        options={states().map(({ code, name }) => ({ value: code, label: name }))}
        value={answers.stateCode}
        onChange={(stateCode) => change({ stateCode })}
        error={errorOf(errors, 'state')}
      />
      <TaskPicker
        tasks={everydayTasks()}
        nearIds={[]}
        taskIds={answers.taskIds}
        find={find}
        label={words.tasks}
        hint={words.tasksHint}
        onChange={(part) => {
          if (part.find !== undefined) setFind(part.find);
          if (part.taskIds !== undefined) change({ taskIds: part.taskIds });
        }}
        error={errorOf(errors, 'find')}
      />
    </Page>
  );
}
