import type { WatersFile } from '../../core/route/shapes.ts';
import { dayText } from '../words/day-text.ts';
import { plannerWords } from '../words/en-planner.ts';
import { SHIPPED_WATERS } from './fetch-waters.ts';

/** Whose waters the trip is planned in, until when they hold; of the invented ones, that they are. */
export function watersLine(waters: WatersFile | undefined): string {
  if (!waters) return '';
  if (waters.name === SHIPPED_WATERS) return plannerWords.demoWaters;
  const { watersSaid: words } = plannerWords;
  const { name, responsible, surveyed, validUntil } = waters;
  return [
    name ? words.named(name) : words.unnamed,
    responsible && words.answered(responsible),
    surveyed && validUntil && words.held(dayText(surveyed), dayText(validUntil)),
  ]
    .filter(Boolean)
    .join(' ');
}
