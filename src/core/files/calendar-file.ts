/** One appointment; times s since 1970. */
export interface Appointment {
  /** Tells this appointment from all others, wherever they were made. */
  readonly uid: string;
  readonly madeAt: number;
  readonly from: number;
  readonly to: number;
  readonly summary: string;
  readonly description: string;
  /** Alarms, s after `from`, each with what it says. */
  readonly alarms: readonly { readonly after: number; readonly text: string }[];
}

/** Octets of a line, without its end (RFC 5545, section 3.1). */
const LINE = 75;

/** An appointment as a calendar file, RFC 5545; times in UTC, so that it rings at the right moment in any zone. */
export function calendarFile({ uid, madeAt, from, to, summary, description, alarms }: Appointment): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Homeleg//Passage plan//EN',
    'METHOD:PUBLISH',
    'BEGIN:VEVENT',
    `UID:${escaped(uid)}`,
    `DTSTAMP:${utc(madeAt)}`,
    `DTSTART:${utc(from)}`,
    `DTEND:${utc(to)}`,
    `SUMMARY:${escaped(summary)}`,
    `DESCRIPTION:${escaped(description)}`,
    ...alarms.flatMap(({ after, text }) => [
      'BEGIN:VALARM',
      'ACTION:DISPLAY',
      `TRIGGER:${duration(after)}`,
      `DESCRIPTION:${escaped(text)}`,
      'END:VALARM',
    ]),
    'END:VEVENT',
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${folded(line)}\r\n`).join('');
}

/** Text of section 3.3.11: its marks escaped, other control characters left out. */
function escaped(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[\\;,]/g, (mark) => `\\${mark}`)
    .replace(/\n/g, '\\n')
    .replace(/[\p{Cc}\p{Cs}]/gu, (mark) => (mark === '\t' ? mark : ''));
}

function utc(seconds: number): string {
  return `${new Date(Math.round(seconds) * 1000).toISOString().slice(0, 19).replace(/[-:]/g, '')}Z`;
}

function duration(seconds: number): string {
  return `${seconds < 0 ? '-' : ''}PT${Math.round(Math.abs(seconds) / 60)}M`;
}

/** Lines longer than allowed go on in the next one after a space; no character is cut in two. */
function folded(line: string): string {
  const encoder = new TextEncoder();
  let out = '';
  let octets = 0;
  for (const character of line) {
    const size = encoder.encode(character).length;
    if (octets + size > LINE) {
      out += '\r\n ';
      octets = 1;
    }
    out += character;
    octets += size;
  }
  return out;
}
