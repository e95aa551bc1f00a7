/** The dark modules of a text as a two-dimensional code, row by row from the top, without a quiet zone; null when it is too long to be read from paper. */
export async function qrModules(text: string): Promise<boolean[][] | null> {
  const { encode } = await import("uqr");
  try {
    return encode(text, { ecc: "M", border: 0, maxVersion: LARGEST }).data;
  } catch {
    return null;
  }
}

/** 81 modules across: at half a millimetre each, which a telephone's camera reads from paper (common practice), 44.5 mm with its quiet zone. */
const LARGEST = 16;
