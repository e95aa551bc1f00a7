import { GAUGES, gaugeOf, gaugeThickness, type GaugeTable, type Job } from "../../../core/index";
import { shopWords } from "../../words/shop";
import { optionsOf, text, type Token } from "../token";

/** The table to begin with where none is named. */
export const usualTable: GaugeTable = "manufacturers-standard";

/** "Its thickness is gauge [16 (0.0598 in)] of the table [Manufacturers' Standard]." */
export function gaugeTokens({ part, fabrication }: Job): Token[] {
  const { fields, noGauge } = shopWords;
  const table = fabrication.gauge ?? usualTable;
  const gauge = gaugeOf(table, part.thickness);
  const gauges = [...GAUGES[table].inches].map(([value, inches]) => ({ value, label: shopWords.gauge(value, inches) }));
  return [
    text("Its thickness is gauge "),
    {
      kind: "choice",
      key: "fabrication.gauge.number",
      field: "part.thickness",
      label: fields.gauge,
      value: gauge ?? "",
      options: gauge === null ? [{ value: "", label: noGauge }, ...gauges] : gauges,
      put: (job, value) => withThickness(job, gaugeThickness(job.fabrication.gauge ?? usualTable, value) ?? job.part.thickness),
    },
    text(" of the table "),
    {
      kind: "choice",
      key: "fabrication.gauge",
      field: "fabrication.gauge",
      label: fields.table,
      value: table,
      options: optionsOf(shopWords.tables),
      put: (job, value) => gaugedBy(job, value as GaugeTable),
    },
    text("."),
  ];
}

/** The job with its thickness called by this table: of the same gauge as before where the table has it, else of the nearest thickness. */
export function gaugedBy(job: Job, table: GaugeTable): Job {
  const { fabrication, part } = job;
  const gauge = fabrication.gauge === null ? null : gaugeOf(fabrication.gauge, part.thickness);
  const thickness = (gauge === null ? null : gaugeThickness(table, gauge)) ?? nearest(table, part.thickness);
  return withThickness({ ...job, fabrication: { ...fabrication, gauge: table } }, thickness);
}

/** mm of the gauge nearest to a thickness in mm; of a common one when there is no thickness yet. */
function nearest(table: GaugeTable, thickness: number): number {
  const usual = gaugeThickness(table, "20") ?? 0;
  const all = [...GAUGES[table].inches.keys()].map((gauge) => gaugeThickness(table, gauge) ?? usual);
  return thickness === 0 ? usual : all.reduce((best, one) => (Math.abs(one - thickness) < Math.abs(best - thickness) ? one : best), usual);
}

function withThickness(job: Job, thickness: number): Job {
  return { ...job, part: { ...job.part, thickness } };
}
