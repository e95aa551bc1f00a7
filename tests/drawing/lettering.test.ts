import { describe, expect, it } from "vitest";
import { textBox, textWidth } from "../../src/drawing/lettering";
import { wrapText } from "../../src/drawing/wrapText";

describe("textWidth", () => {
  it("gives every figure the same width", () => {
    expect(new Set([..."0123456789"].map((figure) => textWidth(figure, 3.5))).size).toBe(1);
  });

  it("grows with the lettering and with every letter", () => {
    expect(textWidth("90", 7)).toBeCloseTo(2 * textWidth("90", 3.5), 12);
    expect(textWidth("stretch-out", 3.5)).toBeGreaterThan(textWidth("stretch", 3.5));
  });
});

describe("textBox", () => {
  const item = { kind: "text", pen: "lettering", at: { x: 10, y: 20 }, text: "90", height: 4, align: "middle", turn: 0 } as const;

  it("stands on the base line, about its place as aligned", () => {
    const { left, right, bottom, top } = textBox(item);
    expect([bottom, top, (left + right) / 2]).toEqual([20, 24, 10]);
    expect(textBox({ ...item, align: "start" }).left).toBe(10);
    expect(textBox({ ...item, align: "end" }).right).toBe(10);
  });

  it("turns with the text", () => {
    const { left, right, bottom, top } = textBox({ ...item, turn: Math.PI / 2 });
    expect(right).toBeCloseTo(10, 9);
    expect(left).toBeCloseTo(6, 9);
    expect(top - bottom).toBeCloseTo(textWidth("90", 4), 9);
  });
});

describe("wrapText", () => {
  it("breaks at spaces, each line within the width, no word lost", () => {
    const text = "Pressure, flue, gas and lifting parts follow the governing code and licensed practice.";
    const lines = wrapText(text, 66, 3.5);
    expect(lines.join(" ")).toBe(text);
    for (const line of lines) expect(textWidth(line, 3.5)).toBeLessThanOrEqual(66);
  });

  it("cuts a word off that is longer than the line", () => {
    const [line] = wrapText("W".repeat(50), 40, 3.5);
    expect(line).toMatch(/^W+…$/);
    expect(textWidth(line ?? "", 3.5)).toBeLessThanOrEqual(40);
  });

  it("gives no line for no words", () => {
    expect(wrapText("  ", 40, 3.5)).toEqual([]);
  });
});
