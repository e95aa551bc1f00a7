import { expect, test } from "vitest";
import firstExample from "../../../src/app/examples/1-lean-to-vent.json";
import { firstDevelopment } from "../../../src/app/store/firstDevelopment";
import { developed } from "../pipe";
import { parseJob } from "../../../src/core/index";

test("the first development, made without checking, is that of the checked example", () => {
  const read = parseJob(firstExample);
  expect(read.ok && read.job).toEqual(firstDevelopment().job);
  expect(firstDevelopment()).toEqual(developed(firstDevelopment().job));
});
