// How are measures written on a drawing? The caller may pass its own way (inches, fractions, decimal comma).

export interface Figures {
  /** A length in mm, written without its unit. */
  length(mm: number): string;
  /** An angle in degrees, written with its sign. */
  angle(degrees: number): string;
}

/** Millimetres to two decimals and degrees to two decimals, zeros at the end dropped. */
export const METRIC: Figures = {
  length: (mm) => decimals(mm),
  angle: (degrees) => `${decimals(degrees)}°`,
};

function decimals(value: number): string {
  const text = (Math.round(value * 100) / 100).toFixed(2).replace(/\.?0+$/, "");
  return text === "-0" ? "0" : text;
}
