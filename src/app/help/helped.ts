import { create } from "zustand";
import type { Clause } from "../describe/token";
import { set, useSettings } from "../store/settings";
import { helpName } from "./helpName";

// Which field of the description is being explained, while fields are explained at all.

export interface Helped {
  readonly clause: string;
  readonly key: string;
  /** Its name in the table of help, and its label. */
  readonly name: string;
  readonly label: string;
}

/** Keeps the last field that had the focus, so that nothing moves until another has it. */
const useHelped = create<{ readonly field: Helped | null }>()(() => ({ field: null }));

/** The id of the element that explains the field in hand. */
export const helpId = "field-help";

/** Whether fields are explained, and which one; null before any had the focus. */
export function useHelp(): { readonly on: boolean; readonly field: Helped | null } {
  const on = useSettings((settings) => settings.explain);
  const field = useHelped((helped) => helped.field);
  return { on, field };
}

/** The id of what explains this field, if it is being explained. */
export function useHelpOf(key: string): string | undefined {
  const on = useSettings((settings) => settings.explain);
  const here = useHelped((helped) => helped.field?.key === key);
  return on && here ? helpId : undefined;
}

/** Explains the field of this clause that has the focus; anything else that takes it changes nothing. */
export function explainField(clause: Clause, focused: EventTarget): void {
  const key = focused instanceof HTMLElement ? focused.dataset.field : undefined;
  const token = clause.tokens.find((one) => "key" in one && one.key === key);
  if (token && "key" in token) useHelped.setState({ field: { clause: clause.id, key: token.key, name: helpName(clause.kind, token.field), label: token.label } });
}

export function switchHelp(): void {
  set("explain", !useSettings.getState().explain);
}
