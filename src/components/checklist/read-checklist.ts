import * as v from 'valibot';
import type { Problem, Result } from '../../core/units/result.ts';
import { type Checklist, CONDITIONS } from './shapes.ts';

const words = (most: number) => v.pipe(v.string(), v.minLength(1), v.maxLength(most));

const point = v.strictObject({
  id: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,63}$/, 'a point’s id is a short word such as kill-cord')),
  text: words(400),
  why: v.optional(words(400)),
  when: v.optional(v.pipe(v.array(v.picklist(CONDITIONS)), v.minLength(1))),
});

const schema = v.pipe(
  v.strictObject({
    title: words(200),
    summary: v.optional(v.string(), ''),
    order: v.optional(v.number()),
    sections: v.pipe(
      v.array(
        v.strictObject({
          title: words(200),
          note: v.optional(words(400)),
          items: v.pipe(v.array(point), v.minLength(1), v.maxLength(200)),
        }),
      ),
      v.minLength(1),
      v.maxLength(50),
    ),
    sources: v.optional(v.array(words(400)), []),
  }),
  v.check(({ sections }) => {
    const ids = sections.flatMap(({ items }) => items.map(({ id }) => id));
    return new Set(ids).size === ids.length;
  }, 'two points have the same id'),
);

/** A checklist from whatever a page gives. */
export function readChecklist(value: unknown): Result<Checklist> {
  const found = v.safeParse(schema, value);
  if (found.success) return { ok: true, value: found.output };
  return { ok: false, problems: found.issues.map(problemOf) };
}

/** What was given may be long, and is told from its beginning. */
const LONGEST = 300;

function problemOf(issue: v.BaseIssue<unknown>): Problem {
  const path = v.getDotPath(issue) ?? '';
  const message = `${path}${path && ': '}${issue.message}`.slice(0, LONGEST);
  return { code: issue.type.replaceAll('_', '-'), path, message };
}
