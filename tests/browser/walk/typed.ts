import type { RandomSource } from "../../support/randomSource";

const arithmetic = ["180-2*45", "1 3/8", "4 1/2 in", "35 mm", "1,5", "2*(30+5)", "90/4", "100-0.5", "½", "-20", "12.345"] as const;

const absurd = [
  "", " ", "0", "-0", "1e9", "1e-9", "99999999", "1e400", "3/0", "0/0", "(", "))", "1..2", "--3", "+", "45°°", "abc", "１２", "∞", "ⅻ", "5 parsecs",
  "89.9999", "90", "-90", "360", "720.5", "0.0001", "<b>7</b>", "7".repeat(300), "(".repeat(200), "🙂", "9".repeat(20) + "mm",
] as const;

const words = ["By hand", "Flashing, north side", "“Ø” & <vent>", "", "سقف", "x".repeat(200)] as const;

/** Something a hand may type: mostly numbers that make sense, some reckoned, some absurd, some words. */
export function typed(source: RandomSource): string {
  if (source.chance(0.5)) return String(Math.round(source.between(1, 240) * 10) / 10);
  if (source.chance(0.4)) return source.pick(arithmetic);
  return source.chance(0.75) ? source.pick(absurd) : source.pick(words);
}
