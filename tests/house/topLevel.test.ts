import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path/posix";
import { expect, it } from "vitest";
import { root } from "./importsOf";

const allowed = ["README.md", "DEVELOPERS.md", "package.json", "package-lock.json", "tsconfig.json", "vite.config.ts", "index.html", "src", "tests", "public", "docs"];

it("the top level holds the entries of the house, dot files, what git ignores, and nothing else", () => {
  const ignored = readFileSync(join(root, ".gitignore"), "utf8").split("\n").map((line) => line.replace(/\/$/, ""));
  const surplus = readdirSync(root).filter((entry) => !entry.startsWith(".") && !allowed.includes(entry) && !ignored.includes(entry));
  expect(surplus).toEqual([]);
});
