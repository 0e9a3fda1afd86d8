import ts from 'typescript';

/** One change to the source: what stands from `start` to `end` is replaced. */
export interface Mutant {
  readonly file: string;
  readonly kind: string;
  readonly start: number;
  readonly end: number;
  readonly replacement: string;
  /** Where to mark that it was reached: an expression to wrap, or a block to begin with. */
  readonly reach: { readonly start: number; readonly end: number; readonly block: boolean };
  readonly line: number;
}

const SWAPS: Readonly<Record<string, readonly string[]>> = {
  '+': ['-'],
  '-': ['+'],
  '*': ['/'],
  '/': ['*'],
  '%': ['*'],
  '**': ['*'],
  '<': ['<=', '>='],
  '<=': ['<', '>'],
  '>': ['>=', '<='],
  '>=': ['>', '<'],
  '===': ['!=='],
  '!==': ['==='],
  '&&': ['||'],
  '||': ['&&'],
  '??': ['&&'],
  '+=': ['-='],
  '-=': ['+='],
  '*=': ['/='],
  '/=': ['*='],
};

const CALLS: Readonly<Record<string, string>> = {
  min: 'max',
  max: 'min',
  floor: 'ceil',
  ceil: 'floor',
  every: 'some',
  some: 'every',
  startsWith: 'endsWith',
  endsWith: 'startsWith',
};
/** Calls left out, so that the list goes on as it was. */
const LEFT_OUT = new Set(['filter', 'slice', 'sort', 'toSorted', 'reverse', 'toReversed', 'trim']);

/**
 * All mutants of one file: operators, conditions, bodies, lists, records, words without a space (codes; messages are for
 * people), and calls that have a counterpart. Types are left alone, and so are numbers.
 */
export function mutantsOf(file: string, text: string): readonly Mutant[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: Mutant[] = [];
  const add = (kind: string, at: ts.Node, replacement: string, whole: ts.Node = at) => {
    found.push({
      file,
      kind,
      start: at.getStart(source),
      end: at.end,
      replacement,
      reach: reachOf(whole, source),
      line: source.getLineAndCharacterOfPosition(at.getStart(source)).line + 1,
    });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
    if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return;
    mutate(node, add, source);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

type Add = (kind: string, at: ts.Node, replacement: string, whole?: ts.Node) => void;

function mutate(node: ts.Node, add: Add, source: ts.SourceFile): void {
  if (ts.isBinaryExpression(node)) {
    const sign = node.operatorToken.getText(source);
    const joins = sign === '+' && (isText(node.left) || isText(node.right));
    for (const other of joins ? [] : (SWAPS[sign] ?? [])) add(`${sign} to ${other}`, node.operatorToken, other, node);
  } else if (ts.isPrefixUnaryExpression(node)) {
    if (node.operator === ts.SyntaxKind.MinusToken) add('sign', node, node.operand.getText(source));
    if (node.operator === ts.SyntaxKind.ExclamationToken) add('not', node, node.operand.getText(source));
    if (node.operator === ts.SyntaxKind.PlusPlusToken) add('++', node, `--${node.operand.getText(source)}`);
  } else if (ts.isPostfixUnaryExpression(node)) {
    const other = node.operator === ts.SyntaxKind.PlusPlusToken ? '--' : '++';
    add('++', node, node.operand.getText(source) + other);
  } else if (ts.isConditionalExpression(node)) {
    for (const value of ['true', 'false']) add(`choice ${value}`, node.condition, value);
  } else if (ts.isIfStatement(node)) {
    for (const value of ['true', 'false']) add(`if ${value}`, node.expression, `(${value})`);
  } else if (ts.isWhileStatement(node)) {
    add('while never', node.expression, 'false');
  } else if (ts.isForStatement(node) && node.condition) {
    add('for never', node.condition, 'false');
  } else if (node.kind === ts.SyntaxKind.TrueKeyword || node.kind === ts.SyntaxKind.FalseKeyword) {
    add('boolean', node, node.kind === ts.SyntaxKind.TrueKeyword ? 'false' : 'true');
  } else if (ts.isBlock(node) && node.statements.length > 0) {
    add('empty body', node, '{}');
  } else if (ts.isArrowFunction(node) && !ts.isBlock(node.body)) {
    add('no value', node.body, 'undefined');
  } else if (ts.isArrayLiteralExpression(node) && node.elements.length > 0 && !assigned(node)) {
    add('empty list', node, '[]');
  } else if (ts.isObjectLiteralExpression(node) && node.properties.length > 0 && !assigned(node)) {
    add('empty record', node, '({})');
  } else if (ts.isStringLiteral(node) && !node.text.includes(' ') && !isKey(node)) {
    add('word', node, node.text === '' ? "'x'" : "''");
  } else if (ts.isCallExpression(node)) call(node, add);
  else if (ts.isPropertyAccessExpression(node) && node.questionDotToken) add('?.', node.questionDotToken, '.', node);
}

function call(node: ts.CallExpression, add: Add): void {
  const { expression } = node;
  if (ts.isIdentifier(expression) && (expression.text === 'min' || expression.text === 'max')) {
    add(`${expression.text}`, expression, `Math.${CALLS[expression.text]}`, node);
  }
  if (!ts.isPropertyAccessExpression(expression) || expression.questionDotToken) return;
  const { name } = expression;
  const other = CALLS[name.text];
  if (other) add(`${name.text} to ${other}`, name, other, node);
  if (LEFT_OUT.has(name.text)) add(`no ${name.text}`, node, expression.expression.getText());
}

/** A mark may not cut an optional chain in two, nor part a method from its object. */
function reachOf(node: ts.Node, source: ts.SourceFile): Mutant['reach'] {
  if (ts.isBlock(node)) return { start: node.getStart(source) + 1, end: node.end, block: true };
  let whole = node;
  for (;;) {
    const { parent } = whole;
    const chained =
      (ts.isPropertyAccessExpression(parent) ||
        ts.isElementAccessExpression(parent) ||
        ts.isCallExpression(parent) ||
        ts.isNonNullExpression(parent)) &&
      parent.expression === whole;
    if (!chained) break;
    whole = parent;
  }
  return { start: whole.getStart(source), end: whole.end, block: false };
}

function isText(node: ts.Node): boolean {
  return ts.isStringLiteral(node) || ts.isTemplateExpression(node) || ts.isNoSubstitutionTemplateLiteral(node);
}

/** A list or record on the left of an assignment takes apart, it makes nothing. */
function assigned(node: ts.Expression): boolean {
  const { parent } = node;
  return ts.isBinaryExpression(parent) && parent.left === node && parent.operatorToken.getText() === '=';
}

function isKey(node: ts.StringLiteral): boolean {
  const { parent } = node;
  return (ts.isPropertyAssignment(parent) && parent.name === node) || ts.isLiteralTypeNode(parent);
}
