import { asLeft } from '../../core/hire/as-left.ts';
import type { Fleet, Hire } from '../../core/hire/shapes.ts';
import { prepareWaters } from '../../core/route/waters.ts';
import { planTrip } from '../../core/trip/plan-trip.ts';
import type { Trip } from '../../core/trip/shapes.ts';
import { fetchWaters, SHIPPED_WATERS } from '../planner/fetch-waters.ts';
import type { Measures } from '../units/measures.ts';
import { reachable } from './reachable.ts';
import { slipText } from './slip-lines.ts';

export interface SlipCode {
  readonly kind: 'link' | 'text';
  readonly content: string;
}

export interface CodeAsked {
  readonly hire: Hire;
  readonly fleet: Fleet;
  readonly measures: Measures;
  /** Address of the planner of this page. */
  readonly planner: string;
  readonly onLine: boolean;
  /** s east of UTC where the desk lies. */
  readonly offset: number;
  readonly measured: (trip: Trip) => Trip;
}

/** A code of more characters than this is too fine for a printer and a phone at arm's length. */
const FINEST = 1400;

/**
 * What the code of a slip holds: a link that opens the same plan; or the slip as plain text where the phone could not
 * reach the page, could not come to the same answer (waters of the desk's own, a survey past its date), or the link
 * would be too long.
 */
export async function slipCode(asked: CodeAsked): Promise<SlipCode> {
  const { hire, fleet, measures } = asked;
  const link = await linkOf(asked);
  return link === undefined
    ? { kind: 'text', content: slipText(hire, fleet, measures) }
    : { kind: 'link', content: link };
}

async function linkOf({ hire, fleet, planner, onLine, offset, measured }: CodeAsked): Promise<string | undefined> {
  const base = fleet.site ?? planner;
  if (!reachable(base, onLine)) return undefined;
  try {
    const trip = asLeft(hire, offset);
    const file = trip.waters === SHIPPED_WATERS ? await fetchWaters(SHIPPED_WATERS) : undefined;
    const plan = planTrip(measured(trip), file && prepareWaters(file), { quick: true });
    if (!plan.ok || plan.value.verdict !== hire.told.verdict) return undefined;
    const { writeShareLink } = await import('../../core/files/share-link.ts');
    const written = writeShareLink(trip, base);
    return written.ok && written.value.length <= FINEST ? written.value : undefined;
  } catch {
    return undefined;
  }
}
