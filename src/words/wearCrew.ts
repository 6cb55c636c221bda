/** What the crew reads, in their own language, of what they wear and do until somebody has measured. */
import type { Presumption } from '#reference/presumption.ts';
import type { Language } from './parts.ts';

type ProtectionKey = Presumption['interimProtections'][number]['key'];

/** For the worker: read on somebody's phone the evening before, or in the morning at the gate. */
export interface CrewWords {
  readonly language: string;
  readonly heading: string;
  readonly why: (above: string) => string;
  readonly respirator: (apf: string) => string;
  readonly respiratorAsk: string;
  readonly protection: Readonly<Record<Exclude<ProtectionKey, 'respirator'>, string>>;
  readonly sign: string;
  readonly noEating: string;
  readonly tell: string;
}

const crewEn: CrewWords = {
  language: 'Language',
  heading: 'For the crew',
  why: (above) =>
    `Nobody has measured this work yet. Until then everyone is protected as if there were more than ${above} of lead in the air.`,
  respirator: (apf) =>
    `Wear your respirator from the moment you enter until you are out and clean. Protection factor ${apf} or more, tested on your own face.`,
  respiratorAsk: 'Ask for a respirator if you want one.',
  protection: {
    protectiveClothing:
      'Wear the coveralls, gloves, hat and shoe covers that the firm gives you. They cost you nothing.',
    changeArea: 'Change where the firm shows you. Work clothes stay there: do not take lead home.',
    handWashing: 'Wash your hands and face when you come out, and always before you eat, drink or smoke.',
    bloodTests: 'A blood test for lead is offered to you.',
    training: 'You are trained before you start: about lead, about the respirator, about working without harm.',
  },
  sign: 'Behind the sign DANGER, LEAD WORK AREA nobody goes without protection.',
  noEating: 'Do not eat, drink, smoke or put on cosmetics in the work area.',
  tell: 'If you feel ill, or cannot breathe well in the mask: stop and say so. You may see a doctor about it.',
};

const crewEs: CrewWords = {
  language: 'Idioma',
  heading: 'Para la cuadrilla',
  why: (above) =>
    `Nadie ha medido todavía este trabajo. Mientras tanto, todos se protegen como si hubiera más de ${above} de plomo en el aire.`,
  respirator: (apf) =>
    `Póngase el respirador antes de entrar y no se lo quite hasta haber salido y estar limpio. Factor de protección ${apf} o más, probado en su propia cara.`,
  respiratorAsk: 'Si quiere un respirador, pídalo.',
  protection: {
    protectiveClothing:
      'Use el overol, los guantes, la gorra y los cubrezapatos que le da la empresa. No le cuestan nada.',
    changeArea: 'Cámbiese donde le indique la empresa. La ropa de trabajo se queda ahí: no se lleve plomo a su casa.',
    handWashing: 'Lávese las manos y la cara al salir, y siempre antes de comer, beber o fumar.',
    bloodTests: 'Se le ofrece un análisis de sangre para el plomo.',
    training: 'Recibe capacitación antes de empezar: sobre el plomo, el respirador y cómo trabajar sin hacerse daño.',
  },
  sign: 'Detrás del letrero que dice DANGER, LEAD WORK AREA (peligro, área de trabajo con plomo) nadie entra sin protección.',
  noEating: 'No coma, no beba, no fume ni se ponga cosméticos en el área de trabajo.',
  tell: 'Si se siente mal o no respira bien con la máscara: pare y avise. Puede consultar a un médico por eso.',
};

export const crew: Readonly<Record<Language, CrewWords>> = { en: crewEn, es: crewEs };
