import { readFileSync, readdirSync } from "node:fs";
import { type Development, develop } from "../../src/core/index";

const FOLDER = new URL("../../src/app/examples/", import.meta.url);

/** The ready jobs, developed, each with the name of its file. */
export const EXAMPLE_DEVELOPMENTS: readonly { readonly name: string; readonly development: Development }[] = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".json")).sort().map((name) => {
    const outcome = develop(JSON.parse(readFileSync(new URL(name, FOLDER), "utf8")));
    if (!outcome.ok) throw new Error(`${name}: ${JSON.stringify(outcome.problems)}`);
    return { name, development: outcome.development };
  });
