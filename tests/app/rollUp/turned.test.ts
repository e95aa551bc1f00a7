import { describe, expect, it } from "vitest";
import { dragged, turnedStep } from "../../../src/app/rollUp/turned";

const level = { turn: 0, tilt: 0 };

describe("turnedStep", () => {
  it("turns the near side to the right by taking the viewer to the left", () => {
    expect(turnedStep(level, "right").turn).toBeLessThan(0);
    expect(turnedStep(level, "left").turn).toBeGreaterThan(0);
  });

  it("turns the near side down by taking the viewer up", () => {
    expect(turnedStep(level, "down").tilt).toBeGreaterThan(0);
    expect(turnedStep(level, "up").tilt).toBeLessThan(0);
  });

  it("comes back after a step there and a step back", () => {
    expect(turnedStep(turnedStep(level, "left"), "right")).toEqual(level);
    expect(turnedStep(turnedStep(level, "up"), "down")).toEqual(level);
  });

  it("goes no farther than straight above and straight below", () => {
    expect(dragged(level, 0, 10_000).tilt).toBe(Math.PI / 2);
    expect(dragged(level, 0, -10_000).tilt).toBe(-Math.PI / 2);
  });
});
