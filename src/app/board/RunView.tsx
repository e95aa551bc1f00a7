import { memo } from "react";
import { pathData } from "../../output/svg/pathData";
import { selectClause } from "../store/select";
import { takeClause, useApp } from "../store/store";
import { howManyth } from "./howManyth";
import { ItemView } from "./ItemView";
import type { Run } from "./runs";

/** A group of items of one part of the job, lit up while its clause is in hand. */
export const RunView = memo(function RunView({ run }: { run: Run }) {
  const lit = useApp((state) => run.clause !== null && selectClause(state) === run.clause);
  const { clause } = run;
  if (clause === null) return <Items run={run} />;
  return (
    <g className="feature" data-lit={lit || undefined} data-clause={clause}>
      <Items run={run} />
      {clause.startsWith("cut:") && (
        <g className="reach" onPointerEnter={() => takeClause(clause)} onPointerLeave={() => takeClause(null)}>
          {run.items.map((item, i) => item.kind === "path" && <path key={i} d={pathData(item)} />)}
        </g>
      )}
    </g>
  );
});

/** Each item under the name of its kind and how manyth it is of that, so that a line more or less does not make others of the rest. */
const Items = memo(function Items({ run }: { run: Run }) {
  const named = howManyth();
  return run.items.map((item) => <ItemView key={named("pen" in item ? `${item.kind} ${item.pen}` : item.kind)} item={item} />);
});
