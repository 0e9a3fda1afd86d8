import { nothing, render, svg } from 'lit';

/** Fills by pattern, so that areas differ without colour. Their lines take their colours from the style sheet. */
const patterns = svg`<defs>
  <pattern id="shoal" width="9" height="9" patternUnits="userSpaceOnUse">
    <rect class="sand" width="9" height="9" />
    <circle class="dot" cx="2" cy="2.5" r="1" />
    <circle class="dot" cx="6.5" cy="7" r="1" />
  </pattern>
  <pattern id="speed-limit" width="10" height="10" patternUnits="userSpaceOnUse">
    <path class="bar" d="M0 5h10" />
  </pattern>
  <pattern id="keep-out" width="9" height="9" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
    <path class="bar" d="M4.5 0v9" />
  </pattern>
</defs>`;

/** Puts the patterns in front of what the renderer draws; ids are seen inside one shadow root only. */
export function addPatterns(drawing: SVGSVGElement): void {
  const holder = document.createElementNS('http://www.w3.org/2000/svg', 'g');
  render(patterns ?? nothing, holder);
  drawing.prepend(holder);
}
