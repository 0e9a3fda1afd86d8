import ts from 'typescript';

/** One small fault: what stands in the file from `start` to `end` is replaced. */
export interface Mutant {
  readonly file: string;
  readonly kind: string;
  readonly start: number;
  readonly end: number;
  readonly replacement: string;
  readonly line: number;
}

/** Boundary and opposite of comparisons, counterparts of signs. */
const SIGNS: Readonly<Record<string, readonly string[]>> = {
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '%': ['*'],
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '+=': ['-='],
  '-=': ['+='],
  '*=': ['/='],
  '/=': ['*='],
};

/** These bind otherwise than their counterparts, so both sides are put in parentheses. */
const JOINS: Readonly<Record<string, string>> = { '&&': '||', '||': '&&', '??': '&&', '**': '*' };

const CALLS: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  sin: 'cos',
  cos: 'sin',
  every: 'some',
  some: 'every',
  startsWith: 'endsWith',
  endsWith: 'startsWith',
};

/** Calls whose object is left as it was. */
const LEFT_OUT = new Set(['filter', 'slice', 'sort', 'toSorted', 'reverse', 'toReversed', 'trim', 'abs']);

type Add = (kind: string, at: ts.Node, replacement: string) => void;

/** All mutants of one file. Types are left alone, and so are texts: templates and what is called `message`. */
export function mutantsOf(file: string, text: string): readonly Mutant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Mutant[] = [];
  const add: Add = (kind, at, replacement) => {
    const start = at.getStart(source);
    const line = source.getLineAndCharacterOfPosition(start).line + 1;
    found.push({ file, kind, start, end: at.end, replacement, line });
  };
  const visit = (node: ts.Node): void => {
    if (leftAlone(node)) return;
    arithmetic(node, add);
    conditions(node, add);
    statements(node, add);
    if (ts.isCallExpression(node)) calls(node, add);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** The file with the mutant in it. */
export function mutated(text: string, { start, end, replacement }: Mutant): string {
  return text.slice(0, start) + replacement + text.slice(end);
}

function leftAlone(node: ts.Node): boolean {
  // `extends Error` is a type to the compiler, a list to call is not.
  if (ts.isTypeNode(node) && !ts.isExpressionWithTypeArguments(node)) return true;
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return true;
  if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return true;
  if (ts.isTemplateExpression(node)) return true;
  return ts.isPropertyAssignment(node) && node.name.getText() === 'message';
}

function arithmetic(node: ts.Node, add: Add): void {
  if (ts.isBinaryExpression(node)) {
    const sign = node.operatorToken.getText();
    const other = JOINS[sign];
    if (other) add(`${sign} to ${other}`, node, `((${node.left.getText()}) ${other} (${node.right.getText()}))`);
    if (sign.startsWith('+') && (saysText(node.left) || saysText(node.right))) return;
    for (const counter of SIGNS[sign] ?? []) add(`${sign} to ${counter}`, node.operatorToken, counter);
  } else if (ts.isPrefixUnaryExpression(node)) {
    const operand = node.operand.getText();
    if (node.operator === ts.SyntaxKind.MinusToken) add('no minus', node, `(${operand})`);
    if (node.operator === ts.SyntaxKind.ExclamationToken) add('no not', node, `(${operand})`);
    if (node.operator === ts.SyntaxKind.PlusPlusToken) add('++ to --', node, `--${operand}`);
    if (node.operator === ts.SyntaxKind.MinusMinusToken) add('-- to ++', node, `++${operand}`);
  } else if (ts.isPostfixUnaryExpression(node)) {
    const up = node.operator === ts.SyntaxKind.PlusPlusToken;
    add(up ? '++ to --' : '-- to ++', node, `${node.operand.getText()}${up ? '--' : '++'}`);
  } else if (ts.isNumericLiteral(node) && !named(node)) {
    const value = Number(node.text.replaceAll('_', ''));
    if (value === 0) add('0 to 1', node, '1');
    else if (value === 1) add('1 to 0', node, '0');
    else add('number doubled', node, String(2 * value));
  }
}

function conditions(node: ts.Node, add: Add): void {
  if (ts.isConditionalExpression(node)) {
    for (const value of ['true', 'false']) add(`choice ${value}`, node.condition, value);
  } else if (ts.isIfStatement(node)) {
    for (const value of ['true', 'false']) add(`if ${value}`, node.expression, value);
  } else if (ts.isWhileStatement(node) || (ts.isForStatement(node) && node.condition)) {
    add('loop never', ts.isWhileStatement(node) ? node.expression : node.condition!, 'false');
  } else if (node.kind === ts.SyntaxKind.TrueKeyword) add('true to false', node, 'false');
  else if (node.kind === ts.SyntaxKind.FalseKeyword) add('false to true', node, 'true');
  else if (ts.isPropertyAccessExpression(node) && node.questionDotToken) add('?. to .', node.questionDotToken, '.');
}

function statements(node: ts.Node, add: Add): void {
  if (ts.isExpressionStatement(node)) add('no statement', node, ';');
  else if (ts.isReturnStatement(node) && !node.expression) add('no return', node, ';');
  else if (ts.isContinueStatement(node)) add('no continue', node, ';');
  else if (ts.isBreakStatement(node) && !ts.isCaseClause(node.parent)) add('no break', node, ';');
  else if (ts.isBlock(node) && node.statements.length > 0) add('empty block', node, '{}');
}

function calls(node: ts.CallExpression, add: Add): void {
  const { expression } = node;
  if (ts.isIdentifier(expression) && /^(?:min|max|floor|ceil|sin|cos)$/.test(expression.text)) {
    add(`${expression.text} to ${CALLS[expression.text]}`, expression, `Math.${CALLS[expression.text]}`);
  }
  if (ts.isIdentifier(expression) && expression.text === 'abs')
    add('no abs', node, `(${node.arguments[0]!.getText()})`);
  if (!ts.isPropertyAccessExpression(expression) || expression.questionDotToken) return;
  const name = expression.name.text;
  if (CALLS[name]) add(`${name} to ${CALLS[name]}`, expression.name, CALLS[name]);
  if (!LEFT_OUT.has(name)) return;
  const rest = name === 'abs' ? node.arguments[0]! : expression.expression;
  add(`no ${name}`, node, `(${rest.getText()})`);
}

/** A text, or a sum that begins or ends with one. */
function saysText(node: ts.Expression): boolean {
  if (ts.isStringLiteralLike(node) || ts.isTemplateExpression(node)) return true;
  return ts.isBinaryExpression(node) && (saysText(node.left) || saysText(node.right));
}

/** The name of a property is no quantity. */
function named(node: ts.NumericLiteral): boolean {
  return ts.isPropertyAssignment(node.parent) && node.parent.name === node;
}
