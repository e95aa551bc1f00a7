import { exerciseOf, variants } from "../../../core/index";
import { useClassList } from "../../class/classList";
import { selectJob } from "../../store/select";
import { useApp } from "../../store/store";
import { listWords as said } from "../../words/markingList";
import { freshId, putRows, type ListRow } from "./markingList";

/** The ways to begin a list: the class as it stands under Teach, or a file, or names typed one by one. */
export function BeginList() {
  const job = useApp(selectJob);
  const students = useClassList((list) => list.students).slice(0, 1000);
  const own = job.exercise.ranges.length + job.exercise.seams.length + job.exercise.hands.length > 0;
  const take = () => {
    const found = own ? variants(exerciseOf(job), students.length) : null;
    const codes = found?.ok ? found.variants.map(({ code }) => code) : [];
    putRows(students.map(({ name }, i): ListRow => ({ id: freshId(), name, code: codes[i] ?? "" })), job);
  };
  return (
    <p>
      {said.begin}{" "}
      {students.length > 0 && (
        <button type="button" className="verb" onClick={take}>
          {said.takeClass(students.length)}
        </button>
      )}{" "}
      {said.pieces(own)}.
    </p>
  );
}
