import { useUnhurried } from "../board/useUnhurried";
import { stationAdded, stationRemoved } from "../describe/stations";
import { changing } from "../store/changing";
import { clauseWords } from "../words/clauses";
import { words } from "../words/interface";
import { VerbMenu } from "./VerbMenu";

const firstAngle = 15;

/** Adds a station in a direction of one's own, or takes the last such station away. */
export function StationVerbs() {
  const extra = useUnhurried((state) => state.development.job.development.extra);
  const { addStation, removeStation } = clauseWords.verbs;
  const verbs = [
    { label: addStation, act: () => changing((by) => by.change((job) => stationAdded(job, (extra.at(-1) ?? 0) + firstAngle), addStation)) },
    { label: removeStation, act: () => changing((by) => by.change((job) => stationRemoved(job, undefined), removeStation)), disabled: extra.length === 0 },
  ];
  return <VerbMenu className="clause-verbs" word={words.more} label={words.stationVerbs} verbs={verbs} />;
}
