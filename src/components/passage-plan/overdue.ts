import { type Appointment, calendarFile } from '../../core/files/calendar-file.ts';
import { secondsOf } from '../../core/water/clock.ts';
import { endsAtHome } from '../answer/sentences.ts';
import { passageSheetWords as sheet, messageWords as words } from '../words/en-passage.ts';
import type { PassageNotes } from './passage-notes.ts';
import {
  boatText,
  CALL_HELP,
  CALL_THEM,
  dayText,
  dueBack,
  type Passage,
  passageSheet,
  routeText,
  sheetText,
} from './passage-sheet.ts';

/** The plan in a few lines for a message. Nothing typed goes along unless `notes` have it. */
export function messageText(passage: Passage): string {
  const { trip, plan, notes, measures: m } = passage;
  const { departure } = trip.conditions;
  const clock = (s: number) => m.clock(departure, s);
  const due = dueBack(passage);
  const turn = plan.turnBack?.onRoute && endsAtHome(plan) ? words.turn(clock(plan.turnBack.time)) : '';
  return [
    plan.verdict === 'no-go' && words.noFit,
    words.leaves(
      notes.marks || boatText(trip),
      plan.balance.persons,
      departure ? `${dayText(departure, 0, m.lang)}, ${clock(0)}` : clock(0),
    ),
    words.by(routeText(trip)),
    turn,
    words.back(clock(plan.time), clock(due)),
    words.overdue(clock(due + CALL_THEM), clock(due + CALL_HELP)),
    ...typed(notes),
  ]
    .filter(Boolean)
    .join('\n');
}

/** The appointment that rings ashore when the boat should be back, and again when help is to be called. */
export function overdueCalendar(passage: Passage, made: { at: number; uid: string }): string | undefined {
  const { trip, notes } = passage;
  const { departure } = trip.conditions;
  if (departure === undefined) return undefined;
  const due = secondsOf(departure) + dueBack(passage);
  const boat = notes.marks || trip.craft.hull.name;
  const appointment: Appointment = {
    uid: made.uid,
    madeAt: made.at,
    from: due,
    to: due + CALL_HELP,
    summary: words.overdueTitle(boat),
    description: sheetText(passageSheet(passage)),
    alarms: [
      { after: 0, text: words.overdueTitle(boat) },
      { after: CALL_THEM, text: words.phoneNow(boat) },
      { after: CALL_HELP, text: words.rescueNow(boat) },
    ],
  };
  return calendarFile(appointment);
}

function typed({ who, reach, contact, rescue, vehicle, gear }: PassageNotes): readonly string[] {
  const lines: [label: string, text: string][] = [
    [sheet.names, who],
    [sheet.reach, reach],
    [sheet.contact, contact],
    [sheet.rescue, rescue],
    [sheet.vehicle, vehicle],
    [sheet.gear, gear],
  ];
  return lines.filter(([, text]) => text !== '').map(([label, text]) => `${label}: ${text}`);
}
