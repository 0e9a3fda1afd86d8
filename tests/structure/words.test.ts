import { globSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';

const WORDS = /\/words\/(?!spoken|list-text|parts)|words\.ts$/;

/** Names imported from the modules of words that are read when a file is loaded or an object made, not when it speaks. */
function keptWords(name: string, text: string): string[] {
  const file = ts.createSourceFile(name, text, ts.ScriptTarget.ES2022, true);
  const words = new Set<string>();
  for (const statement of file.statements) {
    if (!ts.isImportDeclaration(statement) || !WORDS.test((statement.moduleSpecifier as ts.StringLiteral).text))
      continue;
    const { importClause } = statement;
    if (importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword || !importClause?.namedBindings) continue;
    if (!ts.isNamedImports(importClause.namedBindings)) continue;
    for (const { name: bound, isTypeOnly } of importClause.namedBindings.elements) {
      if (!isTypeOnly && bound.text !== 'MapWords') words.add(bound.text);
    }
  }
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node) || ts.isFunctionLike(node) || ts.isTypeNode(node) || isType(node)) return;
    if (ts.isIdentifier(node) && words.has(node.text) && !isName(node)) {
      found.push(`${name}:${file.getLineAndCharacterOfPosition(node.pos).line + 1} ${node.text}`);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return found;
}

function isType(node: ts.Node): boolean {
  return ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node);
}

/** After a point or before a colon it is no reading of the import. */
function isName({ parent, text }: ts.Identifier): boolean {
  return (
    (ts.isPropertyAccessExpression(parent) && parent.name.text === text && parent.expression.getText() !== text) ||
    ((ts.isPropertyAssignment(parent) || ts.isPropertyDeclaration(parent)) && parent.name.getText() === text)
  );
}

describe('words', () => {
  it.each(globSync('src/components/**/*.ts'))('%s keeps none from before the language is known', (path) => {
    expect(keptWords(path, readFileSync(path, 'utf8'))).toEqual([]);
  });

  it('are found where a file or a field keeps them, and not where a function says them', () => {
    const kept = (code: string) => keptWords('x.ts', `import { boatWords as words } from '../words/en.ts';\n${code}`);
    expect(kept('const BOW = words.bow;')).toHaveLength(1);
    expect(kept('const SIDES = Object.entries(words.sides).map(([a]) => a);')).toHaveLength(1);
    expect(kept('class Boat { title = words.bow; }')).toHaveLength(1);
    expect(kept('const bow = () => words.bow;\nclass Boat { title() { return words.bow; } }')).toEqual([]);
  });

  it('all belong to what a language has to give', () => {
    const listed = readFileSync('src/components/words/catalogue.ts', 'utf8');
    const files = globSync('src/components/{words/en*,*/words,*/*-words}.ts').filter((path) =>
      readFileSync(path, 'utf8').includes(' = spoken'),
    );
    expect(files.length).toBeGreaterThan(15);
    const forgotten = files.filter((path) => !listed.includes(path.replace(/^src\/components\/(words\/)?/, '/')));
    expect(forgotten).toEqual([]);
  });

  it('are spoken by every element: each is built on the one that hears the language of the page', () => {
    const deaf = globSync('src/components/**/*.ts').filter(
      (path) => !path.endsWith('speaking-element.ts') && /extends LitElement/.test(readFileSync(path, 'utf8')),
    );
    expect(deaf).toEqual([]);
  });
});
