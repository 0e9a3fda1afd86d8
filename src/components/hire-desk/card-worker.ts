import { type CardReport, type CardWork, cardWork } from './card-work.ts';

const told = (report: CardReport): void => globalThis.postMessage(report);

globalThis.addEventListener('message', ({ data }: MessageEvent<CardWork>) => {
  const work = cardWork(data);
  for (;;) {
    const { done, value } = work.next();
    if (done) return told({ kind: 'done', card: value });
    told({ kind: 'progress', share: value });
  }
});
