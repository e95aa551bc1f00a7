import { expect, test } from "vitest";
import type { Job } from "../../../src/core/index";
import { attempt, make, type Drafts } from "../../../src/app/store/attempt";
import { pipeWith } from "../pipe";

const step = pipeWith([{ id: "end", on: true, kind: "shaped", end: "top", direction: 0, profile: { shape: "step", low: 140, high: 180, rising: "right", position: 0 } }]);
const setProfile = (name: "low" | "high", value: number) => (job: Job): Job => ({
  ...job,
  part: { ...job.part, cuts: job.part.cuts.map((cut) => (cut.kind === "shaped" ? { ...cut, profile: { ...cut.profile, [name]: value } } : cut)) },
});
const setDiameter = (diameter: number) => (job: Job): Job => ({ ...job, part: { ...job.part, diameter } });

test("attempt makes a change that can be made", () => {
  const tried = attempt(step, {}, "high", "190", setProfile("high", 190));
  expect(tried.development?.job).toEqual(setProfile("high", 190)(step));
  expect(tried.drafts).toEqual({});
});

test("attempt keeps the text and the reason of a change that cannot be made", () => {
  const tried = attempt(step, {}, "low", "200", setProfile("low", 200));
  expect(tried.development).toBeNull();
  expect(tried.drafts.low).toMatchObject({ text: "200", fault: { kind: "problem", problem: { code: "too-small", min: 200 } } });
});

test("attempt makes two changes together that only fit together", () => {
  const waiting = attempt(step, {}, "low", "200", setProfile("low", 200)).drafts;
  const tried = attempt(step, waiting, "high", "210", setProfile("high", 210));
  expect(tried.development?.job).toEqual(setProfile("low", 200)(setProfile("high", 210)(step)));
  expect(tried.drafts).toEqual({});
});

test("attempt makes a change alone when what waits still cannot be made", () => {
  const waiting: Drafts = attempt(step, {}, "diameter", "-3", setDiameter(-3)).drafts;
  const tried = attempt(step, waiting, "high", "190", setProfile("high", 190));
  expect(tried.development?.job).toEqual(setProfile("high", 190)(step));
  expect(Object.keys(tried.drafts)).toEqual(["diameter"]);
});

test("make takes an exception in the working out for a fault", () => {
  const poisoned = Object.defineProperty({}, "format", {
    enumerable: true,
    get() {
      throw new Error("broken");
    },
  }) as Job;
  expect(make(poisoned)).toEqual({ ok: false, fault: { kind: "failed" } });
});
