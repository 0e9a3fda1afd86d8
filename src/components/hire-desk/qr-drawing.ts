import { type Bitmap2D, correction, generate, mode } from 'lean-qr';
import { toSvgPath } from 'lean-qr/extras/svg';
import { svg, type TemplateResult } from 'lit';

/** Empty modules round a code, as its standard (ISO/IEC 18004) asks. */
const QUIET = 4;

/** A code of a text; undefined where no code holds so much. More of it can be read when spoilt while that costs little. */
export function qrCode(text: string): Bitmap2D | undefined {
  try {
    const maxCorrectionLevel = text.length > 500 ? correction.L : correction.M;
    // Letters beyond ASCII go as plain UTF-8 bytes: readers that do not know marks for it half-way lose what is before.
    const plain = /^[\0-\x7f]*$/.test(text) ? text : mode.bytes(new TextEncoder().encode(text));
    return generate(plain, { minCorrectionLevel: correction.L, maxCorrectionLevel });
  } catch {
    return undefined;
  }
}

/** Drawn dark on light whatever the page's colours are: readers want it so. */
export function qrDrawing(code: Bitmap2D, name: string): TemplateResult {
  const size = code.size + 2 * QUIET;
  return svg`<svg class="qr" viewBox="${-QUIET} ${-QUIET} ${size} ${size}" role="img" aria-label=${name} shape-rendering="crispEdges">
    <rect x=${-QUIET} y=${-QUIET} width=${size} height=${size} fill="#fff"></rect>
    <path d=${toSvgPath(code)} fill="#000"></path>
  </svg>`;
}
