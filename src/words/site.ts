/** A site, as it is written down where first needed and corrected in the lists. */

export const en = {
  name: 'Name of the site',
  nameHint: 'As everybody on the crew calls it',
  state: 'State or territory',
  stateHint: 'Whose rule governs here',
  setting: 'Is the work indoors or outdoors?',
  settings: [
    { value: 'indoors', label: 'Indoors' },
    { value: 'outdoors', label: 'Outdoors' },
  ] as const,
  altitude: 'Altitude above the sea',
  altitudeHint:
    'May stay blank. Then a rotameter cannot be corrected for thin air unless the station pressure is typed, and a low result proves less.',
  zone: 'Time zone',
  zoneHint: 'Preset from this device; change it where the site keeps another time',
  zoneUnknown: 'This device knows no such time zone. Write it like America/New_York',
};
