import type { Waypoint } from '../route/shapes.ts';
import type { Track } from '../track/shapes.ts';

/** Writes recorded tracks as GPX 1.1; interruptions become segments. */
export function gpxOfTracks(tracks: readonly Track[]): string {
  return gpx(
    tracks.map(({ name, points, breaks }) => {
      const starts = [0, ...breaks];
      const segments = starts.map((from, at) => {
        const lines = points
          .slice(from, starts[at + 1] ?? points.length)
          .map(({ lat, lon, time }) => `      <trkpt ${place(lat, lon)}><time>${clock(time)}</time></trkpt>\n`);
        return `    <trkseg>\n${lines.join('')}    </trkseg>\n`;
      });
      return `  <trk>\n    <name>${escaped(name)}</name>\n${segments.join('')}  </trk>\n`;
    }),
  );
}

/** Writes a route as GPX 1.1, for a plotter or a phone. */
export function gpxOfRoute(name: string, waypoints: readonly Waypoint[]): string {
  const lines = waypoints.map(({ lat, lon, name: own }) => {
    const inside = own === undefined ? '/>' : `><name>${escaped(own)}</name></rtept>`;
    return `    <rtept ${place(lat, lon)}${inside}\n`;
  });
  return gpx([`  <rte>\n    <name>${escaped(name)}</name>\n${lines.join('')}  </rte>\n`]);
}

function gpx(parts: readonly string[]): string {
  return `<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="Homeleg" xmlns="http://www.topografix.com/GPX/1/1">
${parts.join('')}</gpx>
`;
}

/** A tenth of a millimetre: more than any receiver knows, so that a track reads back as it was. */
const FIGURES = 9;

function place(lat: number, lon: number): string {
  return `lat="${degrees(lat)}" lon="${degrees(lon)}"`;
}

function degrees(value: number): string {
  const text = value.toFixed(FIGURES).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

function clock(time: number): string {
  return new Date(Math.round(time * 1000)).toISOString().replace('.000Z', 'Z');
}

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
};

/** Text for XML 1.0: its five marks escaped, and without the characters it cannot hold. */
function escaped(text: string): string {
  return text
    .replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '')
    .replace(/[&<>"']/g, (mark) => ESCAPES[mark]!);
}
