import type { Job } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";
import { describe } from "./describe";
import { shopClauses } from "./shop/shopClauses";
import type { NumberToken, Token } from "./token";

const none: ReadonlySet<string> = new Set();

/** The description clause by clause as plain text, its numbers frozen; parts switched off and what is nothing are left out. `show` writes one number; `trade`: in whose words. */
export function sentencesOf(job: Job, show: (token: NumberToken) => string, trade?: TradeWords): string[] {
  return [...describe(job, undefined, trade), ...shopClauses(job, none)].filter((clause) => clause.on).map((clause) => clause.tokens.map((token) => frozen(token, show)).join("")).filter((sentence) => sentence !== "");
}

/** The same in one text. */
export function sentenceText(job: Job, show: (token: NumberToken) => string, trade?: TradeWords): string {
  return sentencesOf(job, show, trade).join(" ");
}

function frozen(token: Token, show: (token: NumberToken) => string): string {
  switch (token.kind) {
    case "text":
      return token.plain ?? token.text;
    case "break":
      return " ";
    case "number":
      return token.unsaid ? "" : show(token);
    case "choice":
      return token.options.find((option) => option.value === token.value)?.label ?? token.value;
  }
}
