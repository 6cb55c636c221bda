/** Enter moves on through the fields, as a form on paper is filled in; on the last one it moves nowhere. */

/** True when the focus moved, or would have: Enter in a typed field never sends the form off. */
export function goToNextField(form: HTMLFormElement, target: EventTarget): boolean {
  if (!(target instanceof HTMLInputElement) || target.type === 'radio') return false;
  const fields = [...form.querySelectorAll<HTMLElement>('input:not([type=radio]), select, input[type=radio]:checked')];
  const next = fields[fields.indexOf(target) + 1];
  next?.focus();
  if (next instanceof HTMLInputElement && next.type === 'text') next.select();
  return true;
}
