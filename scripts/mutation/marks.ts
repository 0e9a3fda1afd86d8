import ts from 'typescript';

/** A stretch of a file that runs or does not run as a whole; `start` and `end` say what belongs to it. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
  readonly mark: number;
}

export interface Marked {
  readonly text: string;
  readonly stretches: readonly Stretch[];
}

/** A file that notes which of its functions, branches and loops run, in `globalThis.homelegMarks`, numbered from `first`. */
export function marked(file: string, text: string, first: number): Marked {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const stretches: Stretch[] = [];
  const inserted: { at: number; order: number; text: string }[] = [];
  const stretch = (whole: ts.Node): string => {
    const mark = first + stretches.length;
    stretches.push({ start: whole.getStart(source), end: whole.end, mark });
    return `(globalThis.homelegMarks ??= [])[${mark}] = 1`;
  };
  const put = (at: number, order: number, what: string) => inserted.push({ at, order, text: what });
  const markBlock = (block: ts.Block, whole: ts.Node = block) =>
    put(block.getStart(source) + 1, 0, `${stretch(whole)};`);
  // Of marks that begin together the outer one comes first, of those that end together last.
  const around = (node: ts.Node, before: string, after: string) => {
    put(node.getStart(source), -node.end, before);
    put(node.end, -node.getStart(source), after);
  };
  const markValue = (value: ts.Expression, whole: ts.Node = value) => around(value, `(${stretch(whole)}, `, ')');
  const markStatement = (statement: ts.Statement) => {
    if (ts.isBlock(statement)) markBlock(statement);
    else around(statement, `{${stretch(statement)};`, '}');
  };
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) && !ts.isExpressionWithTypeArguments(node)) return;
    if (ts.isFunctionLike(node) && 'body' in node && node.body) {
      // What parameters default to runs with the function.
      if (ts.isBlock(node.body as ts.Node)) markBlock(node.body as ts.Block, node);
      else markValue(node.body as ts.Expression, node);
    } else if (ts.isConditionalExpression(node)) {
      markValue(node.whenTrue);
      markValue(node.whenFalse);
    } else if (ts.isIfStatement(node)) {
      markStatement(node.thenStatement);
      // `else if` is marked where it branches.
      if (node.elseStatement && !ts.isIfStatement(node.elseStatement)) markStatement(node.elseStatement);
    } else if (ts.isIterationStatement(node, false)) markStatement(node.statement);
    else if (ts.isCaseOrDefaultClause(node) && node.statements.length > 0) {
      const mark = stretch(node);
      put(node.statements[0]!.getStart(source), -text.length, `${mark};`);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  inserted.sort((a, b) => a.at - b.at || rank(a) - rank(b) || a.order - b.order);
  let at = 0;
  let out = '';
  for (const one of inserted) {
    out += text.slice(at, one.at) + one.text;
    at = one.at;
  }
  return { text: out + text.slice(at), stretches };
}

/** What ends at a place comes before what begins there. */
function rank({ text }: { text: string }): number {
  return text === ')' || text === '}' ? 0 : 1;
}

/** The mark of the smallest stretch that holds all of it; without one it runs while the file is loaded. */
export function markOf(stretches: readonly Stretch[], start: number, end: number): number | undefined {
  return stretches
    .filter((one) => one.start <= start && end <= one.end)
    .sort((a, b) => a.end - a.start - (b.end - b.start))[0]?.mark;
}
