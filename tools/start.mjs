/** `npm start`: sets up, builds and serves the app on its one address. The book belongs to that address, so the port never moves. */
import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { build, packages, root } from './setUp.mjs';

packages();
build();

console.log('\nFullshift is served until this window is closed or Ctrl+C is pressed. Open this address in a browser:');
const server = spawn(process.execPath, [join(root, 'node_modules', 'vite/bin/vite.js'), 'preview'], {
  cwd: root,
  stdio: 'inherit',
});
server.on('exit', (code) => process.exit(code ?? 0));

const stop = () => server.kill();
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, stop);
// Ended from outside, npm passes the signal to its shell alone: without the shell nobody is left who could end the server.
const starter = process.ppid;
setInterval(() => process.ppid !== starter && stop(), 500).unref();
