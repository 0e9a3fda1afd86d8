import type { BuiltPage } from './built-pages.ts';

/** The addresses of all listed pages, as search engines read them (sitemaps.org, protocol 0.9). */
export function sitemap(pages: readonly BuiltPage[], site: string): string {
  const addresses = pages
    .filter(({ listed }) => listed)
    .map(({ path }) => `<url><loc>${new URL(path, site).href.replaceAll('&', '&amp;')}</loc></url>`);
  return `<?xml version="1.0" encoding="UTF-8"?>
<urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
${addresses.join('\n')}
</urlset>
`;
}

export function robots(site: string): string {
  return `User-agent: *\nAllow: /\n\nSitemap: ${new URL('/sitemap.xml', site).href}\n`;
}
