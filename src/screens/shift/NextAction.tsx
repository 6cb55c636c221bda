/** The foot of the day's page: what is due first. Where the day was made ready, whoever is still to wear a pump comes before it is put on. */
import { MainAction } from '#parts/MainAction.tsx';
import { nextStep } from './nextStep.ts';
import type { ShiftDay } from './useShift.ts';
import { useStillToWear } from './useStillToWear.ts';

export interface NextActionProps {
  readonly day: ShiftDay;
  /** When the last file left this device; null when none did. */
  readonly lastSentAt: string | null;
}

export function NextAction(props: NextActionProps) {
  const { book, place } = props.day;
  if (book.dayPlans.has(place.shift.id)) return <AmongReady {...props} />;
  const next = nextStep(props.day, props.lastSentAt, null);
  return <MainAction to={next.to}>{next.text}</MainAction>;
}

/** Until it is known who does not wear one today, nothing stands there: an action must not change under the thumb. */
function AmongReady({ day, lastSentAt }: NextActionProps) {
  const still = useStillToWear(day);
  if (still === undefined) return null;
  const next = nextStep(day, lastSentAt, still.wearers[0]?.workerId ?? null);
  return <MainAction to={next.to}>{next.text}</MainAction>;
}
