import { lazy, Suspense } from "react";
import type { Quantity } from "../quantity/format";
import type { Fault } from "../store/attempt";

const FaultWords = lazy(() => import("./FaultWords").then((module) => ({ default: module.FaultWords })));

/** The sentence for what is wrong; `quantity` is that of the field typed into. Its words are fetched at the first touch of the page. */
export function FaultSentence(props: { fault: Fault; quantity?: Quantity }) {
  return (
    <Suspense fallback={null}>
      <FaultWords {...props} />
    </Suspense>
  );
}
