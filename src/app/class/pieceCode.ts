import type { Job } from "../../core/index";
import { packVariant } from "./packedVariant";
import { qrModules } from "./qrModules";
import { writeVariantLink } from "./variantLink";

/** A code made larger by the scheme of marks has no more modules across: 38.5 mm on paper. */
const COARSE = 69;

/**
 * What a camera reads from the sheet of a piece: the address that opens it for checking, with its scheme of marks where that keeps the
 * code coarse. Dark modules, row by row from the top; null when even the piece alone is too much.
 */
export async function pieceCode(place: string, code: string, piece: Job): Promise<boolean[][] | null> {
  const modules = async (scheme: boolean) => qrModules(writeVariantLink(place, { code, packed: await packVariant(piece, { scheme }) }));
  const whole = await modules(true);
  if (whole && whole.length <= COARSE) return whole;
  const alone = await modules(false);
  return whole && whole.length === alone?.length ? whole : alone;
}
