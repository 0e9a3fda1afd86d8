import * as v from 'valibot';
import { EXPERIENCES } from '../../core/hire/shapes.ts';

/** What is typed of the due time, read or not. */
const dueTyped = v.object({ kind: v.picklist(['after', 'at']), hours: v.string(), time: v.string() });

const schema = v.object({
  boatId: v.string(),
  weightsText: v.string(),
  fill: v.optional(v.pipe(v.number(), v.minValue(0), v.maxValue(1))),
  fillKnownBy: v.optional(v.picklist(['measured', 'gauge'])),
  routeId: v.string(),
  due: dueTyped,
  experience: v.picklist(EXPERIENCES),
});

export type DueTyped = v.InferOutput<typeof dueTyped>;

/** The desk's questions as far as they are answered: a page that is read anew does not ask a waiting hirer again. */
export type HalfAsked = v.InferOutput<typeof schema>;

/** Of this tab alone, and gone with it: weights are personal. */
const PLACE = 'homeleg-half-asked';

/** Nothing where the browser keeps nothing, or where something else was written. */
export function halfAsked(): HalfAsked | undefined {
  try {
    const read = v.safeParse(schema, JSON.parse(sessionStorage.getItem(PLACE) ?? 'null'));
    return read.success ? read.output : undefined;
  } catch {
    return undefined;
  }
}

export function keepHalfAsked(asked: HalfAsked): void {
  try {
    sessionStorage.setItem(PLACE, JSON.stringify(asked));
  } catch {
    // A browser that keeps nothing asks again.
  }
}
