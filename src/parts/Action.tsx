/** The two kinds of action share one element choice: a link when it goes somewhere, a button when it does something. */
import type { ActionProps } from './actionProps.ts';
import { hrefOf } from './href.ts';

export function Action({ className, ...props }: ActionProps & { readonly className: string | undefined }) {
  const { children, to, onClick, type = 'button', form, busy, describedBy } = props;
  if (to !== undefined)
    return (
      <a className={className} href={hrefOf(to)} aria-describedby={describedBy} onClick={onClick}>
        {children}
      </a>
    );
  return (
    <button
      className={className}
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
