import { stationAdded, stationRemoved } from "../describe/stations";
import { changing } from "../store/changing";
import { useApp, type AppState } from "../store/store";
import { verbWords } from "../words/verbs";
import { VerbMenu } from "./VerbMenu";

const firstAngle = 15;

const extraOf = (state: AppState) => state.development.job.development.extra;

/** Adds a station in a direction of one's own, or takes the last such station away. */
export function StationVerbs() {
  const count = useApp((state) => extraOf(state).length);
  const last = useApp((state) => extraOf(state).at(-1) ?? 0);
  const { addStation, removeStation } = verbWords;
  const verbs = [
    { label: addStation, act: () => changing((by) => by.change((job) => stationAdded(job, last + firstAngle), addStation)) },
    { label: removeStation, act: () => changing((by) => by.change((job) => stationRemoved(job, undefined), removeStation)), disabled: count === 0 },
  ];
  return <VerbMenu className="clause-verbs" word={verbWords.more} label={verbWords.ofStations} verbs={verbs} />;
}
