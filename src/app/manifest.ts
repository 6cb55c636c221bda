/** What the device shows of the installed app. `id` is the identity of the installation and never changes. */
import { en as words } from '#words/shell.ts';
import { receivePath, shareField } from './receivePath.ts';

export const manifest = {
  id: './',
  name: words.appName,
  short_name: words.appName,
  description: words.description,
  lang: 'en',
  start_url: './',
  scope: './',
  display: 'standalone',
  theme_color: '#fbfaf6',
  background_color: '#fbfaf6',
  launch_handler: { client_mode: 'focus-existing' },
  // A phone's share sheet and a desktop's "open with". Systems know some of these by type and some by ending.
  share_target: {
    action: receivePath,
    method: 'POST',
    enctype: 'multipart/form-data',
    params: {
      files: [
        {
          name: shareField,
          accept: [
            'application/zip',
            'application/x-zip-compressed',
            '.zip',
            'application/octet-stream',
            '.age',
            'application/pdf',
            '.pdf',
            'text/csv',
            '.csv',
            'text/plain',
            '.txt',
          ],
        },
      ],
    },
  },
  file_handlers: [
    {
      action: './',
      accept: {
        'application/zip': ['.zip'],
        'application/octet-stream': ['.age'],
        'application/pdf': ['.pdf'],
        'text/csv': ['.csv'],
        'text/plain': ['.txt'],
      },
    },
  ],
  icons: [
    { src: 'icons/notebook-192.png', sizes: '192x192', type: 'image/png' },
    { src: 'icons/notebook-512.png', sizes: '512x512', type: 'image/png' },
    { src: 'icons/notebook-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
} as const;
