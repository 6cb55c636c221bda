/** What the device shows of the installed app. `id` is the identity of the installation and never changes. */
import { en as words } from '#words/shell.ts';

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
  icons: [
    { src: 'icons/notebook-192.png', sizes: '192x192', type: 'image/png' },
    { src: 'icons/notebook-512.png', sizes: '512x512', type: 'image/png' },
    { src: 'icons/notebook-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
} as const;
