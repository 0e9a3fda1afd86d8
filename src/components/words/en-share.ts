import { spoken } from './spoken.ts';

/** Words of links that carry a trip. */
export const shareWords = spoken('shareWords', {
  title: 'Link to this trip',
  about:
    'Opens the whole trip on another phone or computer: boat, weights, seats, route with its place names, the day and the reserve. The link itself holds the trip; nothing is stored elsewhere, and whoever has the link can read it.',
  names: 'With names of people and things aboard, the title of the trip and notes',
  namesHint: 'Otherwise these stay on this device.',
  copy: 'Copy link',
  send: 'Send link',
  link: 'Link',
  copied: 'Copied.',
  copyByHand: 'This browser did not let the page copy. The link is marked: copy it by hand.',
  sendFailed: 'The link could not be handed on. Copy it instead.',
  size: (n: string) => `${n} characters.`,
  long: (n: string) => `${n} characters: some messengers cut links this long. The file of the trip is safer.`,
  refused: 'No link could be made.',
  changed: 'The trip has changed since: this link opens it as it is now.',
  messageTitle: 'Trip',
});
