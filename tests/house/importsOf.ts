import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative } from "node:path/posix";
import { fileURLToPath } from "node:url";
import ts from "typescript";

/** One import, re-export, dynamic import or import type. `file` is relative to src; `target` is too, unless it is a package. */
export interface Import {
  readonly file: string;
  readonly target: string;
  readonly package: boolean;
}

export const root = fileURLToPath(new URL("../../", import.meta.url)).replaceAll("\\", "/");
export const source = join(root, "src");

/** Every file below src with one of the endings, relative to src, in order. */
export function sourceFiles(...endings: readonly string[]): string[] {
  return readdirSync(source, { recursive: true, encoding: "utf8" })
    .map((path) => path.replaceAll("\\", "/"))
    .filter((path) => endings.some((ending) => path.endsWith(ending)))
    .sort();
}

/** The imports of one TypeScript file of src, whatever their form. */
export function importsOf(file: string): Import[] {
  return specifiers(file, readFileSync(join(source, file), "utf8")).map((specifier) =>
    specifier.startsWith(".")
      ? { file, target: relative(source, join(source, dirname(file), specifier)), package: false }
      : { file, target: specifier, package: true },
  );
}

/** What a text of TypeScript imports, as written between the quotes. */
export function specifiers(file: string, text: string): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    const specifier = specifierOf(node);
    if (specifier && ts.isStringLiteralLike(specifier)) found.push(specifier.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.Latest, false));
  return found;
}

function specifierOf(node: ts.Node): ts.Node | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return node.moduleSpecifier;
  if (ts.isImportTypeNode(node)) return ts.isLiteralTypeNode(node.argument) ? node.argument.literal : undefined;
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword) return node.arguments[0];
  return undefined;
}
