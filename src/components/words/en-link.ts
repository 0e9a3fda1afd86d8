import { spoken } from './spoken.ts';

/** What the planner says of links, and of steps back. */
export const linkWords = spoken('linkWords', {
  opened: 'This trip came with the link.',
  openedKept: 'This trip came with the link. The one you had before is kept.',
  notOpened: 'The trip in the link could not be opened, and nothing was changed.',
  aside: 'The trip you had before a link was opened is kept on this device.',
  takeAside: 'Back to it',
  dropAside: 'Let it go',
  asideBack: 'This is the trip you had before.',
  undo: 'Undo',
  redo: 'Redo',
  history: 'Steps back and on',
});
