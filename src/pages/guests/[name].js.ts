import type { APIRoute } from 'astro';
import { FRAMED, FRAMING } from '../../layouts/frames.ts';

const SCRIPTS = { 'tell-height': FRAMED, frames: FRAMING };

export function getStaticPaths() {
  return Object.entries(SCRIPTS).map(([name, code]) => ({ params: { name }, props: { code } }));
}

/** The very lines that the page for other sites gives to copy, at work in the gallery. */
export const GET: APIRoute<{ code: string }> = ({ props }) => new Response(props.code);
