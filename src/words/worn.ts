/** Respirators by name, as workers and office read them, in English and Spanish. */
import type { Respirator } from '#reference/respirators.ts';

type Kind = Pick<Respirator, 'supply' | 'facepiece'>;

const facepieces = {
  en: {
    quarter: 'quarter mask',
    half: 'half mask',
    full: 'full facepiece',
    helmetHood: 'helmet or hood',
    looseFitting: 'loose-fitting facepiece',
  },
  es: {
    quarter: 'mascarilla de un cuarto de cara',
    half: 'media máscara',
    full: 'máscara de cara completa',
    helmetHood: 'casco o capucha',
    looseFitting: 'careta holgada',
  },
} as const satisfies Record<'en' | 'es', Record<Respirator['facepiece'], string>>;

const supplies = {
  en: {
    airPurifying: 'with HEPA filters (N100, R100 or P100)',
    poweredAirPurifying: 'powered, with HEPA filter',
    suppliedDemand: 'supplied air, demand',
    suppliedContinuous: 'supplied air, continuous flow',
    suppliedPressureDemand: 'supplied air, pressure-demand',
    scbaDemand: 'self-contained, demand',
    scbaPressureDemand: 'self-contained, pressure-demand',
  },
  es: {
    airPurifying: 'con filtros HEPA (N100, R100 o P100)',
    poweredAirPurifying: 'con motor y filtro HEPA',
    suppliedDemand: 'con suministro de aire, a demanda',
    suppliedContinuous: 'con suministro de aire, flujo continuo',
    suppliedPressureDemand: 'con suministro de aire, a demanda con presión',
    scbaDemand: 'autónomo, a demanda',
    scbaPressureDemand: 'autónomo, a demanda con presión',
  },
} as const satisfies Record<'en' | 'es', Record<Respirator['supply'], string>>;

/** 'half mask, with HEPA filters (N100, R100 or P100)' */
export const wornText = ({ supply, facepiece }: Kind, language: 'en' | 'es' = 'en'): string =>
  `${facepieces[language][facepiece]}, ${supplies[language][supply]}`;

export const noneWorn = { en: 'none', es: 'ninguno' } as const;
