/** Two cassettes with one number, as devices that count alike leave them: laid into the derived rows of the practice book. */
import type { Page } from '@playwright/test';

/** Two finished air samples get the number of the first; the journal stays as it is. */
export function shareNumber(page: Page): Promise<void> {
  return page.evaluate(async () => {
    const db = await new Promise<IDBDatabase>((resolve, reject) => {
      const asked = indexedDB.open('fullshift-practice');
      asked.onsuccess = () => resolve(asked.result);
      asked.onerror = () => reject(asked.error);
    });
    const transaction = db.transaction('records', 'readwrite');
    const store = transaction.objectStore('records');
    const done = new Promise<void>((resolve, reject) => {
      transaction.oncomplete = () => resolve();
      transaction.onerror = () => reject(transaction.error);
    });
    const asked = store.getAll();
    asked.onsuccess = () => {
      const finished = asked.result.filter(
        (row) => row.kind === 'sample' && row.record.sampleKind === 'air' && row.record.stopped !== null,
      );
      const [one, two] = finished;
      const numberOf = (links: readonly string[]): string => links.find((link) => link.startsWith('number:')) ?? '';
      const links = two.links.map((link: string) => (link.startsWith('number:') ? numberOf(one.links) : link));
      store.put({ ...two, links, record: { ...two.record, sampleNumber: one.record.sampleNumber } });
    };
    await done;
    db.close();
  });
}
