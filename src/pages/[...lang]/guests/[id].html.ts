import type { APIRoute } from 'astro';
import { FRAMED_EXHIBITS } from '../../../layouts/gallery.ts';
import { guestPage } from '../../../layouts/guest-page.ts';
import { languageOf, languagePaths } from '../../../layouts/site-language.ts';

export function getStaticPaths() {
  return languagePaths().flatMap(({ params }) =>
    FRAMED_EXHIBITS.map((exhibit) => ({ params: { ...params, id: exhibit.id }, props: { exhibit } })),
  );
}

/** A page of the gallery's club or hire desk, as plain as such a site would write it. */
export const GET: APIRoute<{ exhibit: (typeof FRAMED_EXHIBITS)[number] }> = ({ props, url }) =>
  new Response(guestPage(props.exhibit, languageOf(url.pathname).language));
