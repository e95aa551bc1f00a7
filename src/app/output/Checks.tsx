import type { Development, Fabrication, Job, Material } from "../../core/index";
import type { Format } from "../quantity/format";
import { useFormat } from "../quantity/useFormat";
import { useFabrication } from "../shop/useFabrication";
import { selectDevelopment } from "../store/select";
import { useApp } from "../store/store";
import { outputWords } from "../words/output";
import type { Wanted } from "./choices";
import { isCut } from "./WantedSentence";

/** What to look at before anything is cut, and what to take care of. */
export function Checks({ what }: { what: Wanted }) {
  const development = useApp(selectDevelopment);
  const fabrication = useFabrication();
  const format = useFormat();
  const { checks, cautions } = outputWords;
  return (
    <div className="checks">
      <section aria-label={checks.title}>
        <h3>{checks.title}</h3>
        <ul>
          {checksOf(what, development, fabrication, format).map((one) => (
            <li key={one}>{one}</li>
          ))}
        </ul>
      </section>
      <section aria-label={cautions.title}>
        <h3>{cautions.title}</h3>
        <ul>
          <li>{cautions.edges}</li>
          {holdsZinc.includes(development.job.fabrication.material) && <li>{cautions.zinc}</li>}
          <li>{cautions.codes}</li>
        </ul>
      </section>
    </div>
  );
}

/** Sheet that is, or may be, coated with or alloyed of zinc. */
const holdsZinc: readonly Material[] = ["steel", "galvanized", "zinc", "brass"];

function checksOf(what: Wanted, { job }: Development, { pieces: [piece] }: Fabrication, format: Format): string[] {
  const { checks } = outputWords;
  if (!piece) return [];
  const { seam } = job.development;
  return [
    isCut(what) ? checks.units[what === "svg" ? "mm" : job.units] : checks.ruler,
    checks.face[piece.face],
    checks.hand[piece.hand],
    piece.allowances.length === 0 ? checks.net : checks.added(piece.allowances.map(({ place, kind, width }) => checks.sum(checks.places[place], checks.kinds[kind], `${format.length(width)} ${format.unit}`)).join(", ")),
    checks.seam(seamText(seam, format)),
    checks.proof,
  ];
}

function seamText(seam: Job["development"]["seam"], format: Format): string {
  const { checks } = outputWords;
  if (seam.at === "angle") return checks.angle(format.angle(seam.angle));
  return seam.at === "shortest" || seam.at === "longest" ? checks.extreme(seam.at, format.trade.element) : checks.seams[seam.at];
}
