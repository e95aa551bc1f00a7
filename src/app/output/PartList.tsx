import type { PartRow } from "../../core/index";
import type { Format } from "../quantity/format";
import { useFormat } from "../quantity/useFormat";
import { kilograms } from "../shop/foundLines";
import { useFabrication } from "../shop/useFabrication";
import { clauseWords } from "../words/clauses";
import { outputWords } from "../words/output";

/** What is to be cut, and what sheet it takes: one row a part. */
export function PartList() {
  const { parts, pieces } = useFabrication();
  const format = useFormat();
  const { parts: said } = outputWords;
  const net = pieces.reduce((sum, { blank, quantity }) => sum + blank.netArea * quantity, 0);
  return (
    <section className="part-list" aria-label={said.title}>
      <h3>{said.title}</h3>
      <div className="part-table" tabIndex={0} role="group" aria-label={said.title}>
        <table>
          <thead>
            <tr>
              {[said.part, said.number, said.sheet, said.area, said.cut, said.mass, said.all].map((name) => (
                <th key={name} scope="col">
                  {name}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {parts.map((part, i) => (
              <tr key={i}>
                <th scope="row">{part.name}</th>
                {cells(part, format).map((text, n) => (
                  <td key={n}>{text}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {parts[0] && <p className="found">{`${stockOf(parts[0], format)} ${said.net}: ${format.area(net)}.`}</p>}
    </section>
  );
}

function cells({ quantity, width, height, blankArea, cutLength, mass, totalMass }: PartRow, format: Format): string[] {
  const weight = (kg: number) => (kg > 0 ? kilograms(kg) : outputWords.parts.none);
  return [String(quantity), `${format.length(width)} × ${format.length(height)} ${format.unit}`, format.area(blankArea), `${format.length(cutLength)} ${format.unit}`, weight(mass), weight(totalMass)];
}

function stockOf({ material, thickness }: PartRow, format: Format): string {
  return thickness > 0 ? `${clauseWords.material[material]}, ${outputWords.parts.thickness(`${format.length(thickness)} ${format.unit}`)}.` : "";
}
