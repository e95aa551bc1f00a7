import type { FabricationChoices, Job } from "../../../core/index";
import type { NumberToken, ChoiceToken, Option } from "../token";

// Makes the fields of the clauses for the shop; `name` is the path inside the section `fabrication` of the job file.

type Change<V> = (choices: FabricationChoices, value: V) => FabricationChoices;

export const shopKey = (name: string) => `fabrication.${name}`;

export function shopNumber(name: string, quantity: NumberToken["quantity"], label: string, value: number, change: Change<number>): NumberToken {
  return { kind: "number", key: shopKey(name), field: shopKey(name), quantity, label, value, put: inShop(change) };
}

/** `usual`: the option that says nothing of note; the clause stays when it is chosen. */
export function shopChoice(name: string, label: string, value: string, options: readonly Option[], change: Change<string>, usual?: string): ChoiceToken {
  return { kind: "choice", key: shopKey(name), field: shopKey(name), label, value, options, put: inShop(change), ...(usual === undefined ? {} : { spells: usual }) };
}

/** The change of the section made in its job. */
export function inShop<V>(change: Change<V>) {
  return (job: Job, value: V): Job => ({ ...job, fabrication: change(job.fabrication, value) });
}
