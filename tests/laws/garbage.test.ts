import { describe, expect, it } from "vitest";
import { develop } from "../../src/core/index";
import { pipeJob, type Job } from "../support/pipeJob";
import { randomPipe } from "../support/randomPipe";
import { checkNumbers } from "./checkNumbers";

class Stranger { readonly format = "flatwright-job"; }

const looped: Record<string, unknown> = { format: "flatwright-job" };
looped["part"] = looped;

/** One of every kind of value. */
const GARBAGE: readonly (readonly [string, unknown])[] = [
  ["undefined", undefined], ["null", null], ["true", true], ["false", false], ["0", 0], ["-0", -0], ["-1", -1], ["a fraction", 0.1], ["the greatest number", Number.MAX_VALUE],
  ["the least number", Number.MIN_VALUE], ["NaN", NaN], ["Infinity", Infinity], ["-Infinity", -Infinity], ["a big integer", 10n], ["an empty text", ""], ["a figure in a text", "12"],
  ["script in a text", "<script>alert(1)</script>"], ["__proto__ in a text", "__proto__"], ["a symbol", Symbol("s")], ["a function", () => 1], ["an empty list", []], ["a list of lists", [[[]]]],
  ["a list with holes", new Array(3)], ["an empty object", {}], ["an object without prototype", Object.create(null)], ["a looped object", looped], ["a date", new Date(0)], ["a pattern", /x/], ["a map", new Map([["format", "flatwright-job"]])],
  ["a set", new Set([1])], ["bytes", new Uint8Array(4)], ["a boxed number", Object(5)], ["an error", new Error("e")], ["a promise", Promise.resolve(1)], ["a class's object", new Stranger()], ["a class", Stranger],
];

describe("develop", () => {
  it.each(GARBAGE)("refuses %s without throwing", (_, value) => expect(develop(value)).toMatchObject({ ok: false }));

  it("refuses a job of a newer version", () => expect(develop({ ...pipeJob({ diameter: 100, length: 200 }), version: 99 })).toMatchObject({ ok: false, problems: [{ code: "newer-version" }] }));

  it("never throws and never gives NaN where any one field of a job is garbage", () => {
    for (const n of [8, 21, 34]) {
      const job = randomPipe(n);
      for (const path of pathsOf(job)) {
        for (const [name, value] of GARBAGE) expectSafe(withField(job, path, value), `pipe ${n}, ${path.join(".")} = ${name}`);
      }
    }
  });

  it("never throws where any one field of a job is missing", () => {
    for (const n of [8, 21, 34]) {
      const job = randomPipe(n);
      for (const path of pathsOf(job)) expectSafe(withoutField(job, path), `pipe ${n} without ${path.join(".")}`);
    }
  });

  it("names the field that holds NaN", () => {
    const job = randomPipe(8);
    for (const path of pathsOf(job).filter((path) => typeof fieldOf(job, path) === "number" && path[0] !== "version")) {
      const outcome = develop(withField(job, path, NaN));
      expect(outcome.ok ? [] : outcome.problems.map((problem) => problem.field)).toContain(path.join("."));
    }
  });
});

function expectSafe(data: unknown, what: string): void {
  try {
    const outcome = develop(data);
    if (outcome.ok) checkNumbers(outcome.development);
    else if (outcome.problems.length === 0) throw new Error("refused without a problem");
  } catch (error) {
    throw new Error(`${what}: ${String(error)}`, { cause: error });
  }
}

type Path = readonly string[];

function pathsOf(value: unknown, path: Path = []): Path[] {
  const inner = typeof value === "object" && value !== null ? Object.entries(value).flatMap(([name, item]) => pathsOf(item, [...path, name])) : [];
  return path.length === 0 ? inner : [path, ...inner];
}

function fieldOf(value: unknown, path: Path): unknown {
  return path.reduce<unknown>((inner, name) => (inner as Record<string, unknown>)[name], value);
}

function withField(job: Job, path: Path, value: unknown): unknown {
  const copy: unknown = structuredClone(job);
  (fieldOf(copy, path.slice(0, -1)) as Record<string, unknown>)[path.at(-1)!] = value;
  return copy;
}

function withoutField(job: Job, path: Path): unknown {
  const copy: unknown = structuredClone(job);
  const holder = fieldOf(copy, path.slice(0, -1)) as Record<string, unknown> | unknown[];
  if (Array.isArray(holder)) holder.splice(Number(path.at(-1)), 1);
  else delete holder[path.at(-1)!];
  return copy;
}
