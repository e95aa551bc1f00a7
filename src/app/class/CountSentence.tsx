import { LIMITS, type Exercise } from "../../core/index";
import { useFormat } from "../quantity/useFormat";
import { classWords as said } from "../words/class";
import { changeExercise } from "./changeExercise";
import type { ClassSearch } from "./useSearch";

const reasons = ["makeable", "inside", "ordinate", "sheet", "alike"] as const;

/** How many pieces the ranges give; when that is too few, what stands in the way. */
export function CountSentence({ exercise, search, wanted }: { exercise: Exercise; search: ClassSearch | null; wanted: number }) {
  const another = () => changeExercise((now) => ({ ...now, seed: now.seed >= LIMITS.seed.max ? 0 : now.seed + 1 }));
  if (!search) return <p className="found" role="status">{said.counting}</p>;
  const { found, tried, all, done } = search;
  const ways = grouped(all);
  const enough = found.length >= wanted;
  return (
    <div className="pieces-count" role="status">
      {done && !enough ? <TooFew search={search} wanted={wanted} /> : <p>{done && BigInt(tried) >= all ? said.all(found.length, ways) : done ? said.atLeast(found.length, ways) : said.counting}</p>}
      {enough && exercise.ranges.length > 0 && (
        <button type="button" className="verb" onClick={another}>
          {said.another}
        </button>
      )}
    </div>
  );
}

function TooFew({ search: { found, tried, failed }, wanted }: { search: ClassSearch; wanted: number }) {
  const { trade } = useFormat();
  const why = reasons.filter((reason) => failed[reason] > 0).sort((a, b) => failed[b] - failed[a]);
  return (
    <div className="fault">
      <p>
        {said.tooFew(found.length, wanted)} {why.length === 0 ? said.few : said.tried(tried)}
      </p>
      {why.length > 0 && (
        <ul>
          {why.map((reason) => (
            <li key={reason}>{said.failed(failed[reason], reason, trade)}</li>
          ))}
        </ul>
      )}
    </div>
  );
}

/** A count in figures with thin gaps by threes; of one too long to mean anything only its power of ten. */
function grouped(count: bigint): string {
  const figures = String(count);
  return figures.length > 15 ? `10^${figures.length - 1}` : figures.replace(/\B(?=(\d{3})+$)/g, "\u2009");
}
