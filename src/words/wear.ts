/** What the crew must wear until somebody has measured: read by whoever plans the job. */
import type { Governs } from '#reference/limits.ts';
import type { Presumption } from '#reference/presumption.ts';
import type { Respirator, RespiratorCondition } from '#reference/respirators.ts';
import { formatNumber } from './quantity.ts';

type PresumedKey = Presumption['presumedTextKey'];

/** A respirator in plain words. Filters of air-purifying ones are of HEPA class, and nothing else is named. */
const respirator: Readonly<Record<Respirator['supply'], Readonly<Record<Respirator['facepiece'], string>>>> = (() => {
  const of = (how: string) => ({
    quarter: `Quarter mask${how}`,
    half: `Half mask${how}`,
    full: `Full facepiece${how}`,
    helmetHood: `Helmet or hood${how}`,
    looseFitting: `Loose-fitting facepiece${how}`,
  });
  return {
    airPurifying: of(' with HEPA-class filters'),
    poweredAirPurifying: of(' with a blower and HEPA-class filters'),
    suppliedDemand: of(' on an air line, demand'),
    suppliedContinuous: of(' on an air line, continuous flow'),
    suppliedPressureDemand: of(' on an air line, pressure-demand'),
    scbaDemand: of(' with its own air, demand'),
    scbaPressureDemand: of(' with its own air, pressure-demand'),
  };
})();

export const en = {
  ask: {
    heading: 'What must the crew wear tomorrow?',
    intro:
      'Until somebody has measured, the rule presumes how much lead is in the air. Two questions say what that is.',
    state: 'In which state is the job?',
    stateMissing: 'Choose the state: it decides whose rule governs',
    tasks: 'What will they do?',
    tasksHint: 'All of it. The task with the most lead decides.',
    tasksMissing: 'Choose at least one task',
    paint: 'Is there lead in the paint?',
    paints: {
      notKnown: { label: 'Nobody knows', hint: 'Then lead is taken for granted' },
      tested: { label: 'A test found lead', hint: 'Any lead that a test finds counts; the rule names no lower limit' },
    },
    shift: 'How long is the shift?',
    upToEight: '8 hours or less',
    hours: (h: number) => `${h} hours`,
    action: 'Show what they must wear',
  },
  answer: {
    heading: 'Until it is measured',
    over: (state: string, day: string) => `${state}, work on ${day}`,
    change: 'Change the answers',
    presumed: {
      notListed: () =>
        'The list of presumed tasks does not name this work. The firm still decides, before it begins, whether anyone may reach the action level.',
      pelToTenPel: (above: string, upTo: string) =>
        `The rule presumes more than ${above} of lead in the air, up to ${upTo}.`,
      abovePel: (above: string) =>
        `The rule presumes more than ${above} of lead in the air, and does not say how much more.`,
      aboveTenPel: (above: string) => `The rule presumes more than ${above} of lead in the air.`,
      aboveFiftyPel: (above: string) => `The rule presumes more than ${above} of lead in the air.`,
    } satisfies Record<PresumedKey, (above: string, upTo: string) => string>,
    /** By the state's own limit, whose list is not held: taken so here, not presumed by a rule that was read. */
    takenAs: (above: string, upTo: string) =>
      upTo === ''
        ? `Taken as more than ${above} of lead in the air.`
        : `Taken as more than ${above} of lead in the air, up to ${upTo}.`,
    because: (tasks: readonly string[]) => `Because of: ${tasks.join('; ')}.`,
    open: 'The list does not settle what this work is; the more careful reading stands until the question is answered.',
    cited: (title: string, section: string, edition: string) =>
      `${title}, ${section}${edition === '' ? '' : `; ${edition}`}.`,
    levelsOfState:
      'Worked out from the state’s own limit, as multiples of it; by the federal list of tasks, since the state’s is not held here.',
    paragraph: (paragraph: string) => `29 CFR 1926.62${paragraph}`,
    textHeld: (document: string, held: string) => `${document}. ${held}.`,
    capped: 'Never above what is immediately dangerous to life or health: 100 mg/m³.',
    ownReading: 'That this work is meant by the list is our own reading of it.',
    ownReadingNone: 'That the list does not name this work is our own reading of it.',
    leadTaken: 'Nobody tested the paint, so lead in it is taken for granted.',
    factor: 'Respirator with a protection factor of at least',
    factorNone: 'No respirator follows from the list',
    factorNoneText:
      'Measure, or write down why nobody can reach the action level. Who wants a respirator is given one.',
    notLess: 'Respirator with a protection factor not under',
    noFactor:
      'The rule says no upper level for this work, so no factor follows from it. Not under this one; how much more, whoever is competent decides. A measurement settles it.',
    holdsTo: (level: string, hours: number) =>
      `It holds up to ${level} outside the mask, on average over a shift of ${hours > 8 ? `${hours} hours` : '8 hours or less'}.`,
    byOwnLimit: (limit: string) => `Worked out against our own limit of ${limit}, which is stricter than the rule’s.`,
    micrograms: (number: string) => `${number}\u00a0µg/m³`,
    longer: (hours: number) =>
      `A shift of ${hours} hours takes more than one of 8: the same air is breathed for longer.`,
    tierOneB: 'Ten is the least factor of the tasks that the list puts above the limit: our own reading.',
    tierTwo: 'The rule states no upper level here either; up to where the next list begins is our own reading.',
    tierThree:
      'The rule states no upper level here. This is the factor of the table above what is presumed: our own reading.',
    factorWorking: 'How the factor was worked out',
    choices: 'Any of these reaches it',
    allChoices: (count: number) => `All ${count} that reach it`,
    respirator,
    factorOf: (apf: number) => `factor ${formatFactor(apf)}`,
    withEvidence: (what: string) => `${what}: only with the maker's written evidence for 1000`,
    hepa: 'HEPA class means filters marked N100, R100 or P100. Throw-away dust masks are not among these.',
    powered: 'Who asks for one with a blower is given it, if it protects enough.',
    eyes: 'Dust that irritates eyes or skin: a full facepiece instead of a half mask.',
    conditions: 'A factor only holds with',
    condition: {
      programme: 'a written respirator programme',
      fitTest: 'a fit test every year, with the very mask that is worn',
      training: 'training in wearing it',
      medicalEvaluation: 'a medical evaluation before it is first worn',
    } satisfies Record<RespiratorCondition['key'], string>,
    notCited: 'from memory, not checked against the text',
    sign: 'Put the sign up at the edge of the work area',
    signText: 'It says DANGER, LEAD WORK AREA, in the words that the rule prescribes.',
    ends: 'What ends it',
    endsText: (level: string) =>
      `Air measured on a worker over a full shift, without counting the respirator, and written down: not above ${level}. From then on the result says what is worn.`,
    endsOwn: 'Worked out from the state’s own limit; its list of tasks is not held here.',
    endsNone: 'Nothing is presumed. What is decided about this work is written down, and a measurement proves it.',
    governs: 'Whose rule',
    taskLimits: 'For this task in this state',
    taskLimit: {
      abrasiveBlasting: (value: string, until: string, then: string) =>
        `Abrasive blasting has a limit of its own: ${value}${until}${then}.`,
      dryBlastingBeforeAssessment: (value: string, until: string, then: string) =>
        `Dry abrasive blasting at most ${value} a day until the exposure is assessed${until}${then}.`,
    } as Readonly<Record<string, (value: string, until: string, then: string) => string>>,
    until: (day: string) => `, until ${day}`,
    afterwards: (value: string) => `; then ${value}`,
    cautions: 'Before this is relied on',
    cautionLines: [
      'A line about a respirator is no permission: some ways of taking paint off are restricted or forbidden by other rules.',
      'Controls come first: wet methods, shrouds, HEPA vacuums, containment. Respirators come on top of them.',
      'The current text of the rule, the state plan, local codes and whoever is licensed or certified decide.',
    ],
    measure: 'Measure it: open a shift',
    begin: 'Begin a book to measure it',
  },
  /** By whose rule a state goes. `state` is its name. */
  governs: {
    federal: (state: string) =>
      `${state}: the federal construction rule for lead, as far as we know. A city may have more.`,
    federalForPrivateFirms: (state: string) =>
      `${state}: for private firms the federal construction rule for lead. The state’s own plan is for state and local government workers.`,
    statePlan: (state: string) =>
      `${state} runs its own plan, and its rule is not held here. What is shown is federal; it may ask for more. Ask the state before the work begins.`,
    statePlanPartlyHeld: (state: string) =>
      `${state} runs its own plan. Its limits are held here, its list of tasks is not: the tasks are read by the federal list. Ask the state before the work begins.`,
    unknownState: () => 'The state is not known, so nobody can say whose rule governs. What is shown is federal.',
    beforeHeldText: (state: string) =>
      `${state}: that day lies before the text that is held here. Nothing is promised.`,
  } satisfies Record<Governs, (state: string) => string>,
};

const formatFactor = (apf: number): string => formatNumber(apf, '', { digits: 'working' });

export type WearWords = typeof en;
