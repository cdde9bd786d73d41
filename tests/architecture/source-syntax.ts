// Questions about a source file that only its syntax answers, so that a word in a string or a comment is not taken
// for code.
import ts from "typescript";

/** Parses a TypeScript or JavaScript file; the path says which. */
export function parseSource(path: string, text: string): ts.SourceFile {
  return ts.createSourceFile(path, text, ts.ScriptTarget.ES2023, true);
}

const isExported = (node: ts.Node): boolean =>
  ts.canHaveModifiers(node) && (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

/**
 * Whether a file exports anything that exists when it runs. A file of types alone has nothing to test and
 * exports none.
 */
export function exportsRuntimeValue(source: ts.SourceFile): boolean {
  return source.statements.some((statement) => {
    if (ts.isExportAssignment(statement)) return true;
    if (ts.isExportDeclaration(statement)) {
      if (statement.isTypeOnly) return false;
      const names = statement.exportClause;
      return names === undefined || !ts.isNamedExports(names) || names.elements.some((name) => !name.isTypeOnly);
    }
    return isExported(statement) && !ts.isInterfaceDeclaration(statement) && !ts.isTypeAliasDeclaration(statement);
  });
}

/** The directives at the top of a file, such as "use client". */
export function directivesOf(source: ts.SourceFile): string[] {
  const directives: string[] = [];
  for (const statement of source.statements) {
    if (!ts.isExpressionStatement(statement) || !ts.isStringLiteral(statement.expression)) break;
    directives.push(statement.expression.text);
  }
  return directives;
}

const TEST_FUNCTIONS = new Set(["describe", "it", "test", "suite"]);
const WAYS_NOT_TO_RUN = new Set(["skip", "only", "todo", "fixme", "fail", "fails", "skipIf", "runIf"]);
const NAMES_NOT_TO_RUN = new Set(["xit", "xtest", "xdescribe", "fit", "fdescribe"]);

const rootOf = (node: ts.Expression): string | undefined => {
  if (ts.isIdentifier(node)) return node.text;
  return ts.isPropertyAccessExpression(node) || ts.isCallExpression(node) ? rootOf(node.expression) : undefined;
};

/** Calls by which a test would be skipped, focused, postponed or expected to fail, as written. */
export function testsNotRun(source: ts.SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isPropertyAccessExpression(node) && WAYS_NOT_TO_RUN.has(node.name.text)) {
      const root = rootOf(node.expression);
      if (root !== undefined && TEST_FUNCTIONS.has(root)) found.push(node.getText(source));
    } else if (ts.isCallExpression(node) && ts.isIdentifier(node.expression) && NAMES_NOT_TO_RUN.has(node.expression.text)) {
      found.push(node.expression.text);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}
