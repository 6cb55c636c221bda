/** `npm start`: sets up, builds and serves the app on its one address. The book belongs to that address, so the port never moves. */
import { build, packages, runPackage } from './setUp.mjs';

packages();
build();
process.exit(runPackage('vite/bin/vite.js', ['preview']));
