import { record } from './record.ts';
export const other = (): number => (record.length > 2 ? record() : 0);
