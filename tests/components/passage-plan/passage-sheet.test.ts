import { describe, expect, it } from 'vitest';
import { messageText, overdueCalendar } from '../../../src/components/passage-plan/overdue.ts';
import { NO_NOTES, type PassageNotes, withoutTyped } from '../../../src/components/passage-plan/passage-notes.ts';
import { dueBack, type Passage, passageSheet, sheetText } from '../../../src/components/passage-plan/passage-sheet.ts';
import { measuresFor } from '../../../src/components/units/measures.ts';
import { minimums } from '../../../src/core/trip/minimums.ts';
import type { Trip } from '../../../src/core/trip/shapes.ts';
import { standingOf } from '../../../src/core/trip/standing.ts';
import { haven, planOf, shipped } from '../../trips.ts';

const typed: PassageNotes = {
  ...NO_NOTES,
  who: 'Edda, 44; Ole, 9, asthma',
  reach: '0555 0100',
  contact: 'Runa 0555 0111',
  rescue: '0555 0199',
  margin: 30,
};

function passage(trip: Trip = shipped('petrol-day'), notes: PassageNotes = typed): Passage {
  const standing = standingOf(trip, haven());
  if (!standing.ok) throw new Error('no route');
  return {
    trip,
    plan: planOf(trip),
    minimums: minimums(standing.value),
    latest: { later: 5400, ends: 'answer' },
    notes,
    measures: measuresFor('nautical', 'en'),
  };
}

const row = (given: Passage, label: string): string | undefined =>
  passageSheet(given)
    .rows.find((found) => found.label === label)
    ?.text.replaceAll('\u00a0', ' ');

describe('a passage plan', () => {
  it('tells who, what boat, which way, when, and how much there must be', () => {
    const day = passage();
    expect(row(day, 'Leaves')).toBe('Saturday, June 19, 2027, 10:00 (clock of UTC−02:00)');
    expect(row(day, 'Plan good if under way by')).toBe('11:30: later the answer gets worse');
    expect(row(day, 'Planned back')).toBe('12:54');
    expect(row(day, 'Back at the latest')).toBe('Saturday, June 19, 2027, 13:25');
    expect(row(day, 'Turn back by')).toMatch(/^11:04, after 12.7 NM/);
    expect(row(day, 'Aboard')).toMatch(/^2 people/);
    expect(row(day, 'Who')).toContain('Edda');
    expect(row(day, 'Route')).toContain('Marl Haven slip – West approach');
  });

  it('has every waypoint with the least fuel, and the latest time where the trip is limited', () => {
    const trip = shipped('hire-hull');
    const limited = passage({ ...trip, policy: { ...trip.policy, timeAllowed: 10_800 } });
    const { heads, rows } = passageSheet(limited).points;
    expect(heads).toEqual(['Point', 'Arrives', 'Least fuel', 'Latest']);
    expect(rows).toHaveLength(limited.minimums.length);
    for (const cells of rows) expect(cells.every((cell) => cell !== '')).toBe(true);
  });

  it('says what to do when they are not back, half an hour apart, by whom to call', () => {
    const { steps } = passageSheet(passage());
    expect(steps[0]).toMatch(/^13:25/);
    expect(steps[1]).toMatch(/^13:55: call us \(0555 0100\)/);
    expect(steps[2]).toMatch(/^14:25, or at once in bad weather or when night falls: call 0555 0199/);
  });

  it('is due on a full five minutes, never before the planned time and the margin', () => {
    for (const margin of [0, 15, 30, 60] as const) {
      const given = passage(undefined, { ...typed, margin });
      const due = dueBack(given);
      expect(due).toBeGreaterThanOrEqual(given.plan.time + margin * 60);
      expect(due).toBeLessThan(given.plan.time + margin * 60 + 300);
    }
  });

  it('says nothing that was typed in what goes to others without leave', () => {
    const others = passage(undefined, withoutTyped(typed));
    const told = [messageText(others), sheetText(passageSheet(others)), overdueCalendar(others, { at: 0, uid: 'x' })];
    for (const text of told) expect(text).not.toMatch(/Edda|Ole|asthma|0555|Runa/);
    expect(messageText(passage())).toContain('Who: Edda, 44');
  });

  it('fits a short message, and says to call for help', () => {
    const message = messageText(passage(undefined, withoutTyped(typed)));
    expect(message.length).toBeLessThan(700);
    expect(message).toContain('at the latest 13:25');
    expect(message).toContain('boat overdue');
  });

  it('makes no calendar without a departure, and says so much time instead of a clock', () => {
    const trip = shipped('petrol-day');
    const { departure: _, ...conditions } = trip.conditions;
    const timeless = passage({ ...trip, conditions });
    expect(overdueCalendar(timeless, { at: 0, uid: 'x' })).toBeUndefined();
    expect(row(timeless, 'Planned back')).toBe('+2 h 54 min');
  });

  it('does not make a trip that does not fit look like a plan', () => {
    const trip = shipped('petrol-day');
    const empty = passage({ ...trip, load: { ...trip.load, fill: 0.2 } });
    expect(empty.plan.verdict).toBe('no-go');
    expect(messageText(empty)).toMatch(/^This trip does not fit/);
    expect(passageSheet(empty).verdict).toBe('no-go');
  });
});
