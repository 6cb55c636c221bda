/** Tomorrow's sheet on paper: what lies ready for whom. Read by the supervisor in the evening and again in the morning. */
import { formatDay, formatList, formatMinutes } from './quantity.ts';

export const en = {
  title: 'Sheet for the day',
  documentTitle: (site: string, workOn: string) => `Sheet for the day, ${site}, ${workOn}`,
  lead: (site: string, workOn: string) => `${site}, ${formatDay(workOn, 'en', 'weekday')}`,
  asked: {
    evening: 'As said the evening before. It proves nothing; what is done counts.',
    morning: 'As said in the morning. It proves nothing; what is done counts.',
    planned: 'Only planned so far: nobody was asked. It proves nothing; what is done counts.',
  },
  wearers: 'Who wears what',
  nobody: 'Nobody is named yet.',
  columns: {
    who: 'Worker',
    task: 'Work',
    pump: 'Pump',
    lot: 'Lot',
    number: 'Number',
    minutes: 'At least',
    tonight: 'Asked tonight',
    morning: 'Asked again',
    write: 'To write',
  },
  minutes: (min: number) => formatMinutes(min),
  minutesNote: (shown: boolean) =>
    shown
      ? 'At least: minutes on the worker until a result below the reporting limit can show anything, at the flow and limit of the plan.'
      : 'How long each must wear the pump until a low result can show anything is not known: no plan says flow and reporting limit.',
  charged: (day: string) => `charged ${formatDay(day, 'en', 'short')}`,
  beside: 'What goes along',
  labels: {
    sparePumps: 'Spare pumps',
    spareCassettes: 'Spare cassettes',
    blanks: 'Field blanks',
    chargedBy: 'Charges the pumps',
    meters: 'Flow meters',
  },
  gear: 'Charging and flow meters',
  remark: (text: string) => `Remark: ${text}`,
  others: (count: number) => `${count} more`,
  none: 'none',
  nobodyCharges: 'not said',
  spareNumbers: (count: number, spaced: readonly string[]) =>
    spaced.length === 0 ? `${count}` : `${count}; spare labels ${formatList(spaced)}`,
  blanksNeeded: (count: number, cassettesCount: number, spaced: readonly string[]) =>
    `${count} for ${cassettesCount} ${cassettesCount === 1 ? 'cassette' : 'cassettes'}${spaced.length === 0 ? '; no labels yet' : `; labels ${formatList(spaced)}`}`,
  meter: (serial: string, dueOn: string | null) =>
    dueOn === null ? `${serial}, due date not written down` : `${serial}, due ${formatDay(dueOn)}`,
  cautions: 'Look at this first',
  duties: 'To do before this work goes on',
  more: (count: number) =>
    count === 1 ? 'And one more, on the list of what is to do.' : `And ${count} more, on the list of what is to do.`,
};
