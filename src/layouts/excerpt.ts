import { plainLetters, term } from './search-term.ts';

/** The part of a text around the first of the words, at most `length` characters, cut between words. */
export function excerpt(text: string, words: string, length = 180): string {
  if (text.length <= length) return text;
  const plain = plainLetters(text);
  const hits = words
    .split(/\s+/)
    .map((word) => plain.indexOf(term(word)))
    .filter((at) => at >= 0);
  const near = Math.max(0, Math.min(...hits, text.length) - length / 3);
  const from = hits.length === 0 || near === 0 ? 0 : text.indexOf(' ', near) + 1;
  const cut = text.slice(from, from + length);
  const whole = from + length < text.length ? cut.slice(0, cut.lastIndexOf(' ')) : cut;
  return `${from > 0 ? '… ' : ''}${whole}${from + length < text.length ? ' …' : ''}`;
}
