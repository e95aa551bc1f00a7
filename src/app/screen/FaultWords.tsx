import type { Quantity } from "../quantity/format";
import { useFormat } from "../quantity/useFormat";
import type { Fault } from "../store/attempt";
import { faultSentence } from "../words/fault";

export function FaultWords({ fault, quantity }: { fault: Fault; quantity?: Quantity }) {
  return faultSentence(fault, useFormat(), quantity);
}
