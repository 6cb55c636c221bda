/** People, job classifications and laboratories as entries of the lists. */
import { emptyLaboratory, LaboratoryLines, type LaboratoryText, readLaboratory } from '#parts/LaboratoryLines.tsx';
import type { JobClassificationRecord, LaboratoryRecord, PersonRecord } from '#records/book.ts';
import { en as gear } from '#words/gear.ts';
import { en as words } from '#words/lists.ts';
import { JobLines, PersonLines } from './FirmLines.tsx';
import type { Entry } from './registers.ts';

export interface PersonText {
  readonly name: string;
  readonly identifier: string;
  readonly language: 'en' | 'es';
  readonly employer: string;
}

const optional = { optional: true } as const;
const present = (parts: readonly (string | null)[]): string => parts.filter((part) => part !== null).join(', ');

export const person: Entry<PersonText, PersonRecord> = {
  added: 'personAdded.v1',
  idName: 'personId',
  list: ({ people }) => people.list,
  title: ({ name }) => name,
  detail: ({ identifier, employer, language }) => present([identifier, employer, words.reads[language]]),
  empty: () => ({ name: '', identifier: '', language: 'en', employer: '' }),
  textOf: ({ name, identifier, language, employer }) => ({
    name,
    identifier: identifier ?? '',
    language,
    employer: employer ?? '',
  }),
  read: (read, text) => {
    const name = read.text('person-name', gear.person.name, text.name);
    const identifier = read.text('person-identifier', gear.person.identifier, text.identifier, optional);
    const employer = read.text('person-employer', gear.person.otherEmployer, text.employer, optional);
    return name === null ? null : { name, identifier, language: text.language, employer };
  },
  unasked: { jobClassificationId: null },
  Lines: PersonLines,
};

export const jobClassification: Entry<{ readonly name: string }, JobClassificationRecord> = {
  added: 'jobClassificationAdded.v1',
  idName: 'jobClassificationId',
  list: ({ jobClassifications }) => jobClassifications.list,
  title: ({ name }) => name,
  detail: () => undefined,
  empty: () => ({ name: '' }),
  textOf: ({ name }) => ({ name }),
  read: (read, text) => {
    const name = read.text('job-name', gear.job.name, text.name);
    return name === null ? null : { name };
  },
  unasked: {},
  Lines: JobLines,
};

export const laboratory: Entry<LaboratoryText, LaboratoryRecord> = {
  added: 'laboratoryAdded.v1',
  idName: 'laboratoryId',
  list: ({ laboratories }) => laboratories.list,
  title: ({ name }) => name,
  detail: ({ accreditation }) => accreditation ?? words.laboratory.accreditationUnknown,
  empty: () => emptyLaboratory,
  textOf: ({ name, address, accreditation }) => ({
    name,
    address: address ?? '',
    accreditation: accreditation ?? '',
  }),
  read: readLaboratory,
  unasked: {},
  Lines: LaboratoryLines,
};
