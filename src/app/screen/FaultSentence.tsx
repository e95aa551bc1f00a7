import { later } from "./later";

/** The sentence for what is wrong; `quantity` is that of the field typed into. Its words are fetched at the first touch of the page. */
export const FaultSentence = later(async () => (await import("./FaultWords")).FaultWords);
