import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { type Appointment, calendarFile } from '../../../src/core/files/calendar-file.ts';

const overdue: Appointment = {
  uid: '5f0c@homeleg',
  madeAt: Date.UTC(2027, 5, 18, 20, 0, 0) / 1000,
  from: Date.UTC(2027, 5, 19, 15, 5, 0) / 1000,
  to: Date.UTC(2027, 5, 19, 16, 5, 0) / 1000,
  summary: 'Is "Grå Mås", the grey boat; back?',
  description: 'Call us: 0555 0100\nthen the harbour, the club; C:\\notes',
  alarms: [
    { after: 0, text: 'Back?' },
    { after: 3600, text: 'Call for help, now; say "boat overdue"' },
  ],
};

/** Read by a library we did not write. */
function read(text: string): ICAL.Event {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return new ICAL.Event(calendar.getFirstSubcomponent('vevent')!);
}

describe('calendarFile', () => {
  it('says when to worry, in words and time, to any calendar', () => {
    const event = read(calendarFile(overdue));
    expect(event.uid).toBe(overdue.uid);
    expect(event.summary).toBe(overdue.summary);
    expect(event.description).toBe(overdue.description);
    expect(event.startDate.toJSDate().toISOString()).toBe('2027-06-19T15:05:00.000Z');
    expect(event.endDate.toJSDate().toISOString()).toBe('2027-06-19T16:05:00.000Z');
  });

  it('rings when the boat should be back and again when help is to be called', () => {
    const alarms = read(calendarFile(overdue)).component.getAllSubcomponents('valarm');
    const rings = alarms.map((alarm) => [
      (alarm.getFirstPropertyValue('trigger') as ICAL.Duration).toSeconds(),
      alarm.getFirstPropertyValue('action'),
      alarm.getFirstPropertyValue('description'),
    ]);
    expect(rings).toEqual([
      [0, 'DISPLAY', 'Back?'],
      [3600, 'DISPLAY', 'Call for help, now; say "boat overdue"'],
    ]);
  });

  it('keeps what the standard asks of every event (RFC 5545, 3.6 and 3.6.1)', () => {
    const calendar = new ICAL.Component(ICAL.parse(calendarFile(overdue)));
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toBeTruthy();
    const event = calendar.getFirstSubcomponent('vevent')!;
    for (const name of ['uid', 'dtstamp', 'dtstart']) expect(event.getAllProperties(name)).toHaveLength(1);
  });

  it('holds any text whole, in lines of at most 75 octets that end with CR LF and cut no character', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 400 }),
        fc.string({ unit: 'binary', maxLength: 300 }),
        (a, b) => {
          const text = calendarFile({ ...overdue, summary: a, description: b });
          const lines = text.split('\r\n');
          expect(lines.pop()).toBe('');
          for (const line of lines) {
            expect(line).not.toMatch(/[\r\n]/);
            expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
            expect(line).not.toMatch(/\p{Cs}/u);
          }
          const plain = (given: string) =>
            given
              .replace(/\r\n?/g, '\n')
              .replace(/[\p{Cc}\p{Cs}]/gu, (mark) => (mark === '\n' || mark === '\t' ? mark : ''));
          expect(read(text).summary ?? '').toBe(plain(a));
          expect(read(text).description ?? '').toBe(plain(b));
        },
      ),
    );
  });

  it('lets no text end the appointment or begin another', () => {
    const text = calendarFile({ ...overdue, summary: 'x\r\nEND:VEVENT\r\nBEGIN:VEVENT\r\nSUMMARY:y' });
    expect(text.match(/^BEGIN:VEVENT/gm)).toHaveLength(1);
    expect(text.match(/^END:VEVENT/gm)).toHaveLength(1);
  });
});
