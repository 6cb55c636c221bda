/** The two kinds of action share one element choice: a link when it goes somewhere, a button when it does something. */
import type { ActionProps } from './actionProps.ts';
import { hrefOf } from './href.ts';

interface ActionElementProps extends ActionProps {
  readonly className: string | undefined;
  /** Found by it on every page: which of the two kinds this is. */
  readonly kind: 'main' | 'quiet';
}

export function Action({ className, kind, ...props }: ActionElementProps) {
  const { children, to, onClick, type = 'button', form, busy, describedBy } = props;
  if (to !== undefined)
    return (
      <a className={className} data-action={kind} href={hrefOf(to)} aria-describedby={describedBy} onClick={onClick}>
        {children}
      </a>
    );
  return (
    <button
      className={className}
      data-action={kind}
      type={type}
      form={form}
      aria-busy={busy ? true : undefined}
      aria-describedby={describedBy}
      onClick={(event) => {
        if (busy) event.preventDefault();
        else onClick?.();
      }}
    >
      {children}
    </button>
  );
}
