import { expect, test } from "vitest";
import { cutCopied, cutMoved, cutRemoved, cutSwitched, freshId, legOfCutAdded, legOfCutRemoved } from "../../../src/app/describe/changeCuts";
import { newCut } from "../../../src/app/describe/newCut";
import { developed, hole, pipeWith, slant } from "../pipe";

const ids = (job: ReturnType<typeof pipeWith>) => job.part.cuts.map((cut) => cut.id);

test("cutMoved changes places with the neighbour and stops at the ends", () => {
  expect(ids(cutMoved(pipeWith([slant, hole]), "branch", -1))).toEqual(["branch", "slope"]);
  expect(ids(cutMoved(pipeWith([slant, hole]), "branch", 1))).toEqual(["slope", "branch"]);
});

test("cutCopied puts a copy with a fresh id right after the cut", () => {
  expect(ids(cutCopied(pipeWith([slant, hole]), "slope"))).toEqual(["slope", "slope-2", "branch"]);
});

test("cutRemoved takes the cut away; cutSwitched turns it off and on", () => {
  expect(ids(cutRemoved(pipeWith([slant, hole]), "slope"))).toEqual(["branch"]);
  expect(cutSwitched(pipeWith([slant]), "slope").part.cuts[0]?.on).toBe(false);
});

test("freshId stays within 40 characters", () => {
  const long = "a".repeat(40);
  expect(freshId(pipeWith([{ ...slant, id: "a".repeat(34) }]), long)).toBe(`${"a".repeat(34)}-2`);
});

test("a leg added to a free profile and removed again leaves the same curve", () => {
  const job = pipeWith([newCut(pipeWith([]), "free")]);
  const id = job.part.cuts[0]?.id ?? "";
  const added = legOfCutAdded(job, id);
  expect(developed(added).pieces[0]?.trimmed.area).toBeCloseTo(developed(job).pieces[0]?.trimmed.area ?? NaN, 6);
  expect(legOfCutRemoved(added, id)).toEqual(job);
});
