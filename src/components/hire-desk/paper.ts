/** Papers a slip is laid out for; the smallest decides what fits. */
export const PAPERS = ['A5', 'A4', 'Letter'] as const;
export type Paper = (typeof PAPERS)[number];

/** Prints the page on a paper. Only a sheet of the document can name one, so it is there while printing. */
export function printOn(paper: Paper): void {
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@page { size: ${paper}; margin: 9mm; }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  const done = () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((each) => each !== sheet);
    globalThis.removeEventListener('afterprint', done);
  };
  globalThis.addEventListener('afterprint', done);
  globalThis.print();
}
