/** Before entering: who wears which pump for which task, what is presumed of the task, and the number for the cassette. */
import type { Presumption } from '#reference/presumption.ts';
import type { Respirator } from '#reference/respirators.ts';

type PresumedKey = Presumption['presumedTextKey'];
type ProtectionKey = Presumption['interimProtections'][number]['key'];

const supplies: Readonly<Record<Respirator['supply'], string>> = {
  airPurifying: 'air-purifying',
  poweredAirPurifying: 'powered air-purifying',
  suppliedDemand: 'supplied air, demand',
  suppliedContinuous: 'supplied air, continuous flow',
  suppliedPressureDemand: 'supplied air, pressure-demand',
  scbaDemand: 'self-contained, demand',
  scbaPressureDemand: 'self-contained, pressure-demand',
};
const facepieces: Readonly<Record<Respirator['facepiece'], string>> = {
  quarter: 'quarter mask',
  half: 'half mask',
  full: 'full facepiece',
  helmetHood: 'helmet or hood',
  looseFitting: 'loose-fitting facepiece',
};

export const en = {
  heading: 'Prepare a worker',
  label: {
    field: 'Number for the cassette',
    own: (spaced: string) => `${spaced}, the label made for this worker`,
    spare: (spaced: string) => `${spaced}, a spare label`,
    next: 'No label: the next free number',
  },
  worker: 'Which worker',
  workerHas: (pump: string, on: boolean) => (on ? `wears pump ${pump} now` : `pump ${pump} is prepared`),
  tasks: 'What will this worker do today?',
  tasksHint: 'All of it. The task with the most lead decides what is presumed.',
  findTask: 'Find a task',
  findTaskHint: 'Type a part of it, such as scraping or window',
  showAll: (count: number) => `Show all ${count} tasks`,
  noSuchTask: 'No task of that name. Clear the field to see all of them.',
  taskMissing: 'Choose at least one task',
  questions: {
    isWireBrushingScraping: 'Does the wire brushing take paint off, as scraping does?',
    isInfraredAHeatGun: 'The list names heat guns. Is the infrared heater used like one?',
    isDustCollected: 'Does the tool collect its dust, with a shroud and HEPA vacuum?',
    isPuttyWorkScraping: 'Is the putty work scraping of lead paint?',
    isTakingOutDemolition: 'Is painted material broken or pried, as in demolition?',
    isSawingCleaningOrDemolition: 'Is it a power tool on paint, or demolition?',
    isResidueScraped: 'Is the softened paint scraped off by hand?',
    isWashingAbovePel: 'Is there reason to believe the washing brings lead above the limit?',
    isCleanupAbovePel: 'Is there reason to believe the cleaning brings lead above the limit?',
    isVacuumBlastingBlasting: 'The list names abrasive blasting. Is vacuum blasting meant by it?',
    isItLeadBurning: 'Is lead itself melted or burned?',
    doesThePaintHoldLead: 'Does the paint that is sprayed hold lead?',
  } as Readonly<Record<string, string>>,
  questionStands: 'The list does not settle it. Until it is answered, the more careful reading stands.',
  questionOpen: 'Leave it open',
  presumed: {
    notListed: () =>
      'The list of presumed tasks does not name this. The firm still decides whether lead in air can matter here.',
    pelToTenPel: (above: string, upTo: string) =>
      `Presumed until measured: above ${above} and up to ${upTo} of lead in the air.`,
    abovePel: (above: string) =>
      `Presumed until measured: above ${above} of lead in the air; how far above is not said.`,
    aboveTenPel: (above: string) => `Presumed until measured: above ${above} of lead in the air.`,
    aboveFiftyPel: (above: string) => `Presumed until measured: above ${above} of lead in the air.`,
  } satisfies Record<PresumedKey, (above: string, upTo: string) => string>,
  leadTaken: 'Nobody has written down that this paint was tested, so lead in it is taken for granted.',
  because: (tasks: string) => `Because of: ${tasks}`,
  paragraph: (title: string, section: string) => `${title}, ${section}.`,
  ownReading: 'This is our own reading of the list; check the current text.',
  meanwhile: 'What must be there until a result says less',
  protection: {
    respirator: 'A respirator',
    protectiveClothing: 'Protective clothing and equipment',
    changeArea: 'A place to change',
    handWashing: 'A place to wash hands',
    bloodTests: 'Blood tests offered',
    training: 'Training',
  } satisfies Record<ProtectionKey, string>,
  protectionDetail: (paragraph: string) => `29 CFR 1926.62${paragraph}`,
  leastFactor: (apf: number) =>
    `A respirator with protection factor ${apf} or more for up to 8 hours of work; a longer day takes more`,
  leastFactorOpen: (apf: number) =>
    `A respirator with protection factor not under ${apf}: the rule says no upper level, so no factor follows from it; whoever is competent decides how much more`,
  leastFactorOwn:
    'worked out from the presumed level and the table of protection factors, for a shift of 8 hours or less',
  respirators: 'Which respirators reach it in up to 8 hours of work',
  respirator: (supply: Respirator['supply'], facepiece: Respirator['facepiece'], apf: number) =>
    `${facepieces[facepiece]}, ${supplies[supply]}: ${apf}`,
  defers:
    'The current text of the rule, the state plan and local codes decide. A fit test and training go with every respirator.',
  job: 'Job classification',
  pump: 'Which pump',
  pumpFlow: (flow: string, time: string) => `flow before ${flow} at ${time}`,
  pumpNoFlow: 'no flow check yet',
  pumpBusy: (worker: string) => `on ${worker} now`,
  pumpWaiting: (worker: string) => `prepared for ${worker}`,
  lot: 'Lot of the cassette',
  lotExpired: (day: string) => `This lot ran out on ${day}. Take a cassette of another lot.`,
  save: 'Prepare the cassette',
  number: 'Write this number on the cassette',
  numberHint: 'The last digit checks the others: a wrong one is noticed at the laboratory’s report.',
  prepared: (worker: string) => `The cassette for ${worker} is prepared.`,
  toWorker: (worker: string) => `Hand the phone to ${worker}`,
  toFlow: 'Check the flow of this pump',
  noFlowYet: (pump: string) => `Pump ${pump} has no flow check yet. Check it before the pump goes on.`,
  flowBetween: 'Check the flow between the two cassettes',
  flowBetweenDetail: 'One check is the flow after of the old one and the flow before of the new one',
  another: 'Prepare another worker',
  noShift: 'This shift is not in the book on this device.',
};

export type FittingWords = typeof en;
