import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseJob } from "../../../src/core/job/parseJob";

const PAGE = readFileSync(new URL("../../../docs/job-format.md", import.meta.url), "utf8");

describe("docs/job-format.md", () => {
  it("docs/job-format.md shows a good job", () => {
    const [, example = ""] = /```jsonc\n([^`]*)```/.exec(PAGE) ?? [];
    expect(parseJob(JSON.parse(example.replace(/\/\/.*$/gm, "")))).toMatchObject({ ok: true });
  });
});
