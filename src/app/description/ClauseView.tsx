import { memo } from "react";
import type { Problem } from "../../core/index";
import type { ShopClause } from "../describe/shop/shopClauses";
import type { Clause, Token } from "../describe/token";
import { FaultSentence } from "../screen/FaultSentence";
import { explainField, useHelp } from "../help/helped";
import { afterTouch, later } from "../screen/later";
import { narrow, useMedia } from "../screen/useMedia";
import { takeClause } from "../store/store";
import { clauseWords } from "../words/clauses";
import { ChoiceField } from "./ChoiceField";
import { NumberField } from "./NumberField";

const ClauseVerbs = afterTouch(async () => (await import("./ClauseVerbs")).ClauseVerbs);
const ShopVerbs = afterTouch(async () => (await import("./ShopVerbs")).ShopVerbs);
const FieldHelp = later(async () => (await import("../help/FieldHelp")).FieldHelp);
const StationVerbs = afterTouch(async () => (await import("./StationVerbs")).StationVerbs);

/** One sentence of the description, tied to its part of the drawing. */
export const ClauseView = memo(function ClauseView({ clause, inHand, notices, found }: { clause: Clause; inHand: boolean; notices: readonly Problem[]; found?: string | undefined }) {
  const take = () => takeClause(clause.id);
  const { on, field } = useHelp();
  const isNarrow = useMedia(narrow);
  // What the shop asks for too much of is said at its number.
  const refused = (token: Token) => (clause.part === "shop" && token.kind === "number" ? notices.find((problem) => problem.field === token.field) : undefined);
  const atField = clause.tokens.map(refused);
  return (
    <li
      className="clause"
      data-clause={clause.id}
      data-in-hand={inHand || undefined}
      data-off={clause.on ? undefined : true}
      onFocus={(event) => {
        take();
        explainField(clause, event.target);
      }}
      onPointerEnter={take}
      onPointerLeave={() => takeClause(null)}
    >
      <div role="group" aria-label={clause.name}>
        <p>
          {clause.tokens.map((token, i) => (
            <TokenView key={"key" in token ? token.key : i} token={token} before={clause.tokens[i - 1]} after={clause.tokens[i + 1]} refused={atField[i]} />
          ))}
          {!clause.on && <span className="off"> ({clauseWords.off})</span>}
        </p>
        {found && <p className="found">{found}</p>}
        {notices.filter(({ field: at }) => !atField.some((one) => one?.field === at)).map((problem, i) => (
          <p key={i} className="notice">
            <FaultSentence fault={{ kind: "problem", problem }} />
          </p>
        ))}
        {clause.part === "cut" && <ClauseVerbs id={clause.id.replace(/^cut:/, "")} name={clause.name} />}
        {clause.part === "stations" && <StationVerbs />}
        {clause.part === "shop" && <ShopVerbs id={clause.id.replace(/^shop:/, "") as ShopClause} name={clause.name} />}
        {isNarrow && on && field?.clause === clause.id && <FieldHelp field={field} />}
      </div>
    </li>
  );
});

const TokenView = memo(function TokenView({ token, before, after, refused }: { token: Token; before: Token | undefined; after: Token | undefined; refused: Problem | undefined }) {
  switch (token.kind) {
    case "text":
      return before && "key" in before ? token.text.slice(headOf(token).length) : token.text;
    case "break":
      return <br />;
    case "number":
      return <NumberField token={token} tail={headOf(after)} refused={refused} />;
    case "choice":
      return <ChoiceField token={token} tail={headOf(after)} />;
  }
});

/** The sign a text begins with that belongs to the field before it. */
function headOf(token: Token | undefined): string {
  return token?.kind === "text" ? (/^[.,;:]/.exec(token.text)?.[0] ?? "") : "";
}
