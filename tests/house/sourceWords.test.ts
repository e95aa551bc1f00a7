import { readFileSync } from "node:fs";
import { join } from "node:path/posix";
import { describe, expect, it } from "vitest";
import { root, source, sourceFiles } from "./importsOf";

/** What src may not say, and why. */
const forbidden: readonly { readonly what: string; readonly pattern: RegExp }[] = [
  { what: "unfinished work", pattern: /\b(TODO|FIXME|XXX)\b/ },
  { what: "code made from text", pattern: /\beval\s*\(|\bnew\s+Function\b|\bFunction\s*\(\s*["'`]|\bset(?:Timeout|Interval)\s*\(\s*["'`]/ },
  { what: "markup made from text", pattern: /\b(?:innerHTML|outerHTML|insertAdjacentHTML|dangerouslySetInnerHTML|srcdoc|createContextualFragment)\b|document\.write\b/ },
  { what: "check switched off without its reason", pattern: /@ts-(?:ignore|nocheck)|eslint-disable(?!.* -- \w)/ },
];

/** Names that look like addresses and are never asked for: XML namespaces, JSON Schema dialects. */
const namespaces = ["http://www.w3.org/2000/svg", "http://www.w3.org/1999/xlink", "http://www.w3.org/1999/xhtml", "http://json-schema.org/draft-07/schema#", "https://json-schema.org/draft/2020-12/schema"];

describe("the source", () => {
  const files = sourceFiles(".ts", ".tsx", ".css");
  const text = (file: string) => readFileSync(join(source, file), "utf8");

  for (const { what, pattern } of forbidden) {
    it(`holds no ${what}`, () => {
      expect(files.filter((file) => pattern.test(text(file)))).toEqual([]);
    });
  }

  it("holds no web address but the names of namespaces", () => {
    const addresses = files.flatMap((file) => [...text(file).matchAll(/\b(?:https?|wss?):\/\/[^\s"'`)<>]*/g)].map(([address]) => ({ file, address })));
    expect(addresses.filter(({ address }) => !namespaces.includes(address))).toEqual([]);
  });

  it("loads nothing from elsewhere in index.html", () => {
    expect(readFileSync(join(root, "index.html"), "utf8")).not.toMatch(/(?:src|href|content)="?(?:https?:)?\/\//);
  });
});
