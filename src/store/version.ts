/** Version of the app: stands on papers, in backups and under About. */
import { version } from '../../package.json';

export const appVersion: string = version;
