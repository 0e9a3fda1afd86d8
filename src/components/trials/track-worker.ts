/* Reads tracks beside the page: a whole day's track keeps no finger waiting. */
import { readTracks, type TracksRead } from './track-reader.ts';

export type WorkerTold =
  | { readonly share: number; readonly file: string }
  | { readonly read: TracksRead }
  | { readonly failed: true };

self.addEventListener('message', async ({ data }: MessageEvent<readonly { name: string; content: string }[]>) => {
  const files = data.map(({ name, content }) => ({ name, text: async () => content }));
  const tell = (told: WorkerTold) => self.postMessage(told);
  try {
    const read = await readTracks(
      files,
      Date.now() / 1000,
      (share, file) => tell({ share, file }),
      () => true,
    );
    tell(read ? { read } : { failed: true });
  } catch {
    tell({ failed: true });
  }
});
