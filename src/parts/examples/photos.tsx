/** Examples of pictures beside a record: one to be taken, in each of its states, and those that are there or elsewhere. */
import { OutgoingPhotoLines } from '../OutgoingPhotoLines.tsx';
import { PhotoField, type PhotoFieldProps } from '../PhotoField.tsx';
import { PhotoLines } from '../PhotoLines.tsx';
import type { Example } from './example.ts';

const nothing = (): void => undefined;

const field = (name: string, label: string, part: Partial<PhotoFieldProps>) => (
  <PhotoField
    name={name}
    label={label}
    state="none"
    why={null}
    url={null}
    onChoose={nothing}
    onRemove={nothing}
    {...part}
  />
);

export const examples: readonly Example[] = [
  { part: 'PhotoField', name: 'default', render: () => field('photo-reading', 'Take a photo of the reading', {}) },
  {
    part: 'PhotoField',
    name: 'while it is made small',
    render: () => field('photo-site', 'Take a photo of the site', { state: 'preparing' }),
  },
  {
    part: 'PhotoField',
    name: 'with error',
    render: () => field('photo-label', 'Take a photo of the label', { state: 'refused', why: 'cannotRead' }),
  },
  {
    part: 'PhotoLines',
    name: 'on another device',
    render: () => (
      <PhotoLines
        photos={[
          {
            key: 'one',
            of: 'certificate',
            taken: '25 November, 06:50, by Wanda Keel',
            widthPx: 2048,
            heightPx: 1536,
            url: null,
          },
        ]}
      />
    ),
  },
  {
    part: 'OutgoingPhotoLines',
    name: 'no room',
    render: () => (
      <OutgoingPhotoLines
        photos={[
          { id: 'one', title: 'Pump P-11', of: 'meterReading', state: 'notKept', why: 'quota', canTryAgain: true },
        ]}
        onTryAgain={nothing}
        onLetGo={nothing}
      />
    ),
  },
];
