import { useFormat } from "../../quantity/useFormat";
import { setFine, useBetween } from "../../store/between";
import { selectStation } from "../../store/select";
import { useApp } from "../../store/store";
import { boardWords } from "../../words/board";
import { project, toggleKept, useProjected, type Projected } from "../projected";

const choices = ["hand", "kept", "all"] as const satisfies readonly Projected[];

/** Whose projection lines stand on the board; keeping those of the station in hand; pointing between stations. */
export function ProjectedChoice() {
  const whose = useProjected((state) => state.whose);
  const kept = useProjected((state) => state.kept);
  const station = useApp(selectStation);
  const fine = useBetween((between) => between.fine);
  const { trade } = useFormat();
  const isKept = station !== null && kept.includes(station);
  return (
    <>
      <label>
        {boardWords.projected}{" "}
        <select className="choice" value={whose} onChange={(event) => project(choices.find((one) => one === event.target.value) ?? "hand")}>
          {choices.map((one) => (
            <option key={one} value={one}>
              {boardWords.whose[one]}
            </option>
          ))}
        </select>
      </label>
      <button type="button" className="verb" disabled={station === null} onClick={() => station !== null && toggleKept(station)}>
        {isKept ? boardWords.letGo : boardWords.keep}
      </button>
      <button type="button" className="verb" aria-pressed={fine} title={boardWords.betweenHelp(trade)} onClick={() => setFine(!fine)}>
        {boardWords.between}
      </button>
    </>
  );
}
