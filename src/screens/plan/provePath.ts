/** The way to the question whether a sample can prove anything, with the figures that were typed or planned. */
interface Figures {
  readonly methodId: string | null;
  readonly limit: string | number | null;
  readonly flow: string | number | null;
  readonly cassettes: string | number | null;
}

export function provePath({ methodId, limit, flow, cassettes }: Figures): string {
  const asked = new URLSearchParams();
  const named = { method: methodId, limit, flow, cassettes };
  for (const [name, value] of Object.entries(named)) if (value !== null && value !== '') asked.set(name, String(value));
  return asked.size === 0 ? '/prove' : `/prove?${asked}`;
}
