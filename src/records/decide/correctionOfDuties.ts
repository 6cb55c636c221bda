/** What a correction of roster, measurements of others, notices and duties must keep: the order and the days that were asked for first. */
import type { AnyRecord, NoticeRecord, WorkdayRecord } from '../book.ts';
import type { Fact, FactBody, FactKind } from '../fact.ts';
import type { Ask } from './ask.ts';
import { refuseLaterDay } from './roster.ts';
import { minuteOf } from './telling.ts';

/** Acts that left the firm: the paper says what it says, and a new one is made. */
const issuedKinds: readonly FactKind[] = ['noticeIssued.v1', 'determinationWritten.v1', 'exposureRecordIssued.v1'];
/** What is told of days that have been. */
const pastKinds: readonly FactKind[] = ['measurementReported.v1', 'dutyDone.v1', 'recordsRequested.v1'];

function refuseOrder({ refuse }: Ask, { kind }: Fact, changed: unknown): void {
  if (kind === 'measurementReported.v1') {
    const { workOn, receivedOn } = changed as FactBody<'measurementReported.v1'>;
    if (receivedOn < workOn) refuse('receivedBeforeWork', ['body/new'], { workOn, receivedOn });
  }
  if (kind === 'employmentStated.v1') {
    const { fromOn, toOn } = changed as FactBody<'employmentStated.v1'>;
    if (fromOn !== null && toOn !== null && toOn < fromOn) refuse('endBeforeStart', ['body/new']);
  }
  if (kind === 'limitsChosen.v1') {
    const { ownActionLevelUgPerM3: action, ownPelUgPerM3: limit } = changed as FactBody<'limitsChosen.v1'>;
    if (action !== null && limit !== null && action > limit) refuse('actionAboveLimit', ['body/new']);
  }
}

/** `changed`: the body as the correction leaves it. */
export function refuseOnDuties(
  ask: Ask<'valueCorrected.v1'>,
  fact: Fact,
  changed: unknown,
  records: readonly AnyRecord[],
): void {
  const { path, new: value } = ask.fact.body;
  if (issuedKinds.includes(fact.kind)) ask.refuse('fieldFixed', ['body/path'], { path });
  if (fact.kind === 'workNoted.v1') {
    const day = records.find(({ key }) => key.startsWith('workday:')) as WorkdayRecord | undefined;
    if (!day?.worked?.some(({ factId }) => factId === fact.id)) ask.refuse('alreadyStruck', ['body/replaces']);
  }
  if (pastKinds.includes(fact.kind) && path.endsWith('On') && typeof value === 'string')
    refuseLaterDay(ask as Ask, 'body/new', value);
  if (fact.kind === 'noticeGiven.v1' && path === '/happened/at' && typeof value === 'string') {
    const notice = records.find(({ key }) => key.startsWith('notice:')) as NoticeRecord | undefined;
    if (notice && minuteOf(value) < minuteOf(notice.issued.at))
      ask.refuse('givenBeforeIssued', ['body/new'], { at: notice.issued.at, zone: ask.fact.happened.zone });
  }
  refuseOrder(ask as Ask, fact, changed);
}
