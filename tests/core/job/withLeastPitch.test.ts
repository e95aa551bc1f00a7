import { describe, expect, it } from "vitest";
import { parseJob } from "../../../src/core/job/parseJob";
import { readJobText } from "../../../src/core/job/readJobText";
import { withLeastPitch } from "../../../src/core/job/withLeastPitch";
import { pipeJob } from "../../support/pipeJob";

const job = (slits: unknown) => {
  const plain = pipeJob({ diameter: 100, length: 150 });
  return { ...plain, fabrication: { ...plain.fabrication, edges: { top: { kind: "flange", width: 10, slits }, bottom: { kind: "none" } } } };
};
const pitch = (read: ReturnType<typeof parseJob>) => (read.ok && read.job.fabrication.edges.top.kind === "flange" ? read.job.fabrication.edges.top.slits : read);

describe("the pitch of slits", () => {
  it("is 0 where the flange is not slit, or 2 mm at least", () => {
    for (const slits of [0, 2, 12, 10_000]) expect(pitch(parseJob(job(slits)))).toBe(slits);
    for (const slits of [0.01, 1.99, -3]) expect(parseJob(job(slits))).toEqual({ ok: false, problems: [{ code: "too-small", field: "fabrication.edges.top.slits", value: slits, min: 2 }] });
    for (const slits of [NaN, "12"]) expect(parseJob(job(slits))).toMatchObject({ ok: false, problems: [{ code: "not-a-number", field: "fabrication.edges.top.slits" }] });
  });

  it("is read as the least where an earlier file has a smaller one", () => {
    for (const [slits, read] of [[0.01, 2], [1.5, 2], [0, 0], [12, 12]]) expect(pitch(readJobText(JSON.stringify(job(slits))))).toBe(read);
    expect(readJobText(JSON.stringify(job(-3)))).toMatchObject({ ok: false });
  });

  it("leaves alone what is no job, and the data it was given", () => {
    for (const data of [null, 7, [], { fabrication: 3 }, { fabrication: { edges: [] } }, { fabrication: { edges: { top: null } } }]) expect(withLeastPitch(structuredClone(data))).toEqual(data);
    const data = job(0.5);
    withLeastPitch(data);
    expect(data).toEqual(job(0.5));
  });
});
