/** Heads of the money tables for a spreadsheet. Read by the office. */
export const en = {
  fileName: (fromOn: string, toOn: string) => `measuring-costs-${fromOn}-to-${toOn}.csv`,
  billsFileName: (fromOn: string, toOn: string) => `measuring-bills-${fromOn}-to-${toOn}.csv`,
  columns: [
    'Job',
    'From',
    'To',
    'For',
    'Planned, number',
    'Planned, USD',
    'Spent, number',
    'Spent, USD',
    'To come, number',
    'To come, USD',
  ],
  total: 'Total',
  billColumns: ['Day', 'For', 'Number', 'Amount, USD', 'Job', 'Number of the bill', 'Remark', 'Struck'],
  struck: (why: string | null) => (why === null || why === '' ? 'struck' : `struck: ${why}`),
};
