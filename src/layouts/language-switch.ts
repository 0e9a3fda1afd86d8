/** Under which name the device keeps the language chosen. */
const KEPT = 'homeleg-language';

/**
 * The language somebody chose holds on this device: a page opened in another one leads on to it, with all that stands
 * behind its address. Nobody is led anywhere who never chose.
 */
export function keepLanguage(): void {
  const links = [...document.querySelectorAll<HTMLAnchorElement>('.tongues a')];
  for (const link of links) {
    link.addEventListener('click', (event) => {
      keep(link.hreflang);
      // A trip in the address comes along.
      link.href = withRest(link);
      if (link.hreflang === document.documentElement.lang) event.preventDefault();
    });
  }
  const wanted = links.find((link) => link.hreflang === kept());
  if (wanted && wanted.hreflang !== document.documentElement.lang) location.replace(withRest(wanted));
}

function withRest({ href }: HTMLAnchorElement): string {
  return new URL(href).pathname + location.search + location.hash;
}

function keep(language: string): void {
  try {
    localStorage.setItem(KEPT, language);
  } catch {
    // Then it holds for this page.
  }
}

function kept(): string | null {
  try {
    return localStorage.getItem(KEPT);
  } catch {
    return null;
  }
}
