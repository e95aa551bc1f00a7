import { memo } from "react";
import { pathData } from "../../output/svg/pathData";
import { selectClause } from "../store/select";
import { takeClause, useApp } from "../store/store";
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

const Items = memo(function Items({ run }: { run: Run }) {
  return run.items.map((item, i) => <ItemView key={i} item={item} />);
});
