import { fabricate, type Cut, type FabricatedPiece, type Fabrication, type FabricationChoices } from "../../../src/core/index";
import { developed } from "../../support/developed";
import { pipeJob, planeCut, type PipeDescription } from "../../support/pipeJob";

/** A pipe of 100 mean diameter and 200 length in 2 mm sheet, seam in front, with these choices. */
export function shopPipe(fabrication: Partial<FabricationChoices> = {}, cuts: readonly Cut[] = [], more: Partial<PipeDescription> = {}): Fabrication {
  return fabricate(developed(pipeJob({ diameter: 100, length: 200, thickness: 2, cuts, fabrication, ...more })));
}

/** Its one piece. */
export function shopPiece(...choices: Parameters<typeof shopPipe>): FabricatedPiece {
  return shopPipe(...choices).pieces[0]!;
}

/** A slope of 45° at the top end, highest at the back. */
export const slope = planeCut({ angle: 45, direction: 180, height: 120 });
