import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openStore } from '../../../src/components/store/open-store.ts';

describe('openStore', () => {
  it('has a place for the hires of a desk, its fuel notes and its fleet', async () => {
    const names = (await openStore()).objectStoreNames;
    for (const name of ['hires', 'fuel-notes', 'desk']) expect(names).toContain(name);
  });

  it('is one database for everything that asks', async () => {
    expect(await openStore()).toBe(await openStore());
  });

  it('lets go for a newer page in another tab, which then is not blocked', async () => {
    const old = await openStore();
    const newer = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('homeleg', old.version + 1);
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
      request.onblocked = () => reject(new Error('blocked'));
    });
    expect(newer.version).toBe(old.version + 1);
    newer.close();
    await new Promise((resolve) => {
      indexedDB.deleteDatabase('homeleg').onsuccess = resolve;
    });
    expect(await openStore()).not.toBe(old);
  });
});
