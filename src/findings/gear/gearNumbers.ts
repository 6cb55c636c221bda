/** Numbers about gear that no method or limit set states, each with where it comes from. */
import type { PracticeNumber } from '../practice.ts';

/** Months from a flow meter's certificate to its next calibration, where the certificate states no day. The firm may state another. */
export const recalibrationMonths: PracticeNumber = {
  value: 12,
  source: {
    title: '40 CFR 50 Appendix B',
    section: '9.2.17: a transfer standard is calibrated anew once a year',
    edition: '2015 annual edition',
    mark: 'READ',
    note: 'Written for ambient particulate. It says when a calibration is due, and stands in for no stated day of a flow check',
  },
};

/** Days ahead within which a calibration or an expiry counts as soon. */
export const dueSoonDays: PracticeNumber = {
  value: 30,
  source: {
    title: "Fullshift's own choice",
    mark: 'DERIVED',
    note: 'A laboratory keeps a flow meter for some weeks',
  },
};

/** Changes of flow that are told of a pump at a glance; the picture shows them all. */
export const changesAtAGlance = 3;
