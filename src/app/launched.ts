/** A file opened with the installed app from the desktop goes the way of a shared one: put by, then shown. */
import { park } from '#store/received.ts';
import { receivePath } from './receivePath.ts';

/** File Handling API: what the browser hands to a launched app. */
interface Launch {
  readonly targetURL?: string;
  readonly files?: readonly { readonly getFile: () => Promise<File> }[];
}
interface LaunchQueue {
  readonly setConsumer: (consumer: (launch: Launch) => void) => void;
}

const isFile = (file: File | null): file is File => file !== null;
const show = (question: string): void => {
  window.location.hash = `#/received${question}`;
};

async function takeUp({ files = [], targetURL }: Launch): Promise<void> {
  if (files.length > 0) {
    // A file that was moved or may not be read is none.
    const read = await Promise.all(files.map((handle) => handle.getFile().catch(() => null)));
    const { not } = await park(read.filter(isFile));
    show(not === null ? '' : `?not=${not}`);
  } else if (targetURL === new URL(receivePath, document.baseURI).href) show('');
}

/** Only browsers on a desktop have such a queue. */
export function takeUpLaunches(): void {
  const { launchQueue } = window as { readonly launchQueue?: LaunchQueue };
  launchQueue?.setConsumer((launch) => void takeUp(launch));
}
