import type { Company, Kept } from '../../core/trip/company.ts';
import type { PassageNotes } from '../passage-plan/passage-notes.ts';
import { boatText, type PassageSheet, passageSheet } from '../passage-plan/passage-sheet.ts';
import type { Measures } from '../units/measures.ts';
import { companyWords as words } from '../words/en-company.ts';
import { passageSheetWords as sheetWords } from '../words/en-passage.ts';
import { verdictWords } from '../words/en-verdict.ts';

/** One passage plan for all boats: times of the last one home, and the least of each boat at every point. */
export function companySheet({ boats, verdict }: Company, notes: PassageNotes, measures: Measures): PassageSheet {
  const last = boats.reduce((a, b) => (b.plan.time > a.plan.time ? b : a));
  const sheet = passageSheet({ ...last, latest: undefined, notes, measures });
  const own = [
    sheetWords.answer,
    sheetWords.boat,
    sheetWords.marks,
    sheetWords.aboard,
    ...Object.values(sheetWords.fuel),
  ];
  return {
    ...sheet,
    title: sheetWords.title(words.sheetTitle(boats.length)),
    verdict,
    rows: [
      { label: sheetWords.answer, text: verdictWords[verdict] },
      ...boats.map((boat) => ({ label: boat.name, text: boatLine(boat, measures) })),
      ...sheet.rows.filter(({ label }) => !own.includes(label)),
    ],
    points: {
      caption: sheet.points.caption,
      heads: [sheetWords.point, sheetWords.arrives, ...boats.map(({ name }) => name)],
      rows: sheet.points.rows.map(([point, arrives], at) => [
        point ?? '',
        arrives ?? '',
        ...boats.map(({ minimums, plan }) => {
          const least = minimums[at]?.goOn;
          return least === undefined ? '–' : measures.show('amount', Math.max(least, 0), plan.store);
        }),
      ]),
    },
  };
}

function boatLine({ trip, plan }: Kept, m: Measures): string {
  const amount = (value: number) => m.show('amount', value, plan.store);
  return [
    boatText(trip),
    sheetWords.aboardOf(plan.balance.persons, m.show('mass', plan.balance.peopleAndGear)),
    sheetWords.fuelOf(amount(plan.usable), amount(plan.need.median), amount(plan.reserve)),
    verdictWords[plan.verdict],
  ].join('; ');
}
