import type { Fault } from "../store/attempt";
import type { Format, Quantity } from "../quantity/format";
import { words } from "./interface";
import { problemSentence, quantitySentence } from "./problems";

/** What quantity stands at this path of a job file. */
export function quantityOf(field: string): Quantity {
  if (/(angle|direction|turn|extra\.\d+)$/.test(field)) return "angle";
  if (/(kFactor|share)$/.test(field)) return "ratio";
  return /(stations|density|quantity|marks)$/.test(field) ? "count" : "length";
}

/** The sentence for what is wrong; `quantity` is that of the field typed into. */
export function faultSentence(fault: Fault, format: Format, quantity: Quantity = "length"): string {
  switch (fault.kind) {
    case "quantity":
      return quantitySentence(fault.reason, quantity);
    case "failed":
      return words.message.failed;
    case "problem":
      return problemSentence(fault.problem, { field: (value) => shown(value, quantityOf(fault.problem.field), format), length: (mm) => `${format.length(mm)} ${format.unit}` }, format.trade);
  }
}

function shown(value: number, quantity: Quantity, format: Format): string {
  const figure = format.field(value, quantity);
  return quantity === "angle" ? `${figure}°` : quantity === "length" ? `${figure} ${format.unit}` : figure;
}
