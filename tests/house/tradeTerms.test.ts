import { readFileSync } from "node:fs";
import { join } from "node:path/posix";
import ts from "typescript";
import { expect, test } from "vitest";
import { TRADE, type TradeWords } from "../../src/drawing/tradeWords";
import { source, sourceFiles } from "./importsOf";

// The words in which the trade differs stand in one table; every other list of words takes them from there.

const table = "drawing/tradeWords.ts";
const lists = sourceFiles(".ts").filter((file) => file !== table && (file.startsWith("app/words/") || /[wW]ords\.ts$/.test(file)));
const terms = Object.values<TradeWords>(TRADE).flatMap(({ girth, views, pattern, element }) => [girth, ...Object.values(views), pattern, element]);
const spoken = new RegExp(`\\b(${terms.join("|")})s?\\b`, "i");

/** The texts of a file of source, without its comments and its code; a word used as the name of a variant is no text. */
function texts(file: string): string[] {
  const found: string[] = [];
  const walk = (node: ts.Node): void => {
    const name = ts.isElementAccessExpression(node.parent ?? node) || ts.isLiteralTypeNode(node.parent ?? node);
    if ((ts.isStringLiteralLike(node) && !name) || ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node)) found.push(node.text);
    if (!ts.isImportDeclaration(node)) node.forEachChild(walk);
  };
  walk(ts.createSourceFile(file, readFileSync(join(source, file), "utf8"), ts.ScriptTarget.Latest, true));
  return found;
}

test("the lists of words are found, and hold texts", () => {
  expect(lists.length).toBeGreaterThan(8);
  expect(lists.flatMap(texts).length).toBeGreaterThan(300);
});

test("no list of words says for itself what the table of trade words says", () => {
  expect(lists.flatMap((file) => texts(file).filter((text) => spoken.test(text)).map((text) => `${file}: ${text}`))).toEqual([]);
});

test("the variants differ in what the trade says differently, and have a word for everything", () => {
  const [first, second] = Object.values<TradeWords>(TRADE);
  for (const key of ["girth", "pattern", "element", "threeViews", "along"] as const) {
    expect(first?.[key]).toBeTruthy();
    expect(second?.[key]).toBeTruthy();
    expect(first?.[key]).not.toBe(second?.[key]);
  }
});
