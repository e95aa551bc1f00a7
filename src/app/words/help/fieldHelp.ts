import type { HelpTable } from "../../help/helpRow";
import { endsHelp } from "./ends";
import { openingsHelp } from "./openings";
import { pipeHelp } from "./pipe";
import { shopHelp } from "./shop";

/** What is said and shown about every field of the description, by the field's name (`helpName`). */
export const FIELD_HELP: HelpTable = { ...pipeHelp, ...endsHelp, ...openingsHelp, ...shopHelp };
