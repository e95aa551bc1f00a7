import { loadKernel } from "../oracle/kernel";
import { cutCases, developed, exampleCases, extent, mitre, mitreHeight, stationCases, type DevelopingCase } from "./developing";
import { trimPipe } from "../../src/core/trim/trimmed";
import { kernelCuts, type KernelCut } from "./kernelCut";
import { CLASS_FILES, CLASS_SIZES, classFile, type ClassFile } from "./classSets";
import { redrawn } from "./redrawing";
import { laidOut, pathsIn, plainLines, printingCases, written } from "./printing";
import { fastestRun, growthExponent, leastProcessorTime, secondsPerCall, timed, type Timing } from "./timing";
import { duration, ratio, table } from "./table";

// `npm run bench`: how long developments take, how that grows, and how it compares within the same run with a
// general-purpose kernel making the same cut and with the bare arithmetic.

const sample = secondsPerSample();
console.log(`Node ${process.version}, ${process.platform} ${process.arch}; the fastest of warm batches\n`);
console.log(`one sine, one cosine and one square root: ${duration(sample)} a sample\n`);
developments("the examples", exampleCases);
growth("stations", stationCases);
growth("cuts", cutCases);
redraws();
await prints();
await classSets();
await againstKernel();

function developments(title: string, cases: readonly DevelopingCase[]): number[] {
  const seconds = cases.map(({ data }) => secondsPerCall(() => developed(data)));
  const rows = cases.map(({ name, data }, i) => {
    const { stations, loops, segments, points } = extent(developed(data));
    const time = seconds[i] ?? NaN;
    return [name, duration(time), String(stations), String(loops), String(segments), (segments / loops).toFixed(1), String(points), ratio(time / ((stations + points) * sample))];
  });
  console.log(`Developing ${title}`);
  console.log(table(["", "time", "stations", "loops", "segments", "a loop", "points", "to bare sin, cos, sqrt"], rows));
  console.log();
  return seconds;
}

function growth(what: string, cases: readonly DevelopingCase[]): void {
  const seconds = developments(`by ${what}`, cases);
  const sizes = cases.map(({ size }) => size);
  console.log(`  time grows as ${what} to the power ${growthExponent(sizes, seconds).toFixed(2)} over the whole range; the last step ${growthExponent(sizes.slice(-2), seconds.slice(-2)).toFixed(2)}\n`);
}

/** Against the 16.7 ms of one frame at 60 Hz. */
function redraws(): void {
  const rows = [...exampleCases, ...stationCases.slice(-1), ...cutCases.slice(-1)].map(({ name, data }) => {
    const seconds = secondsPerCall(() => redrawn(data));
    const { items, text } = redrawn(data);
    return [name, duration(seconds), `${(seconds * 6000).toFixed(0)} %`, String(items), `${(text.length / 1024).toFixed(0)} kB`];
  });
  console.log("Redrawing: development, board and its SVG");
  console.log(table(["", "time", "of a 60 Hz frame", "items", "SVG"], rows));
  console.log();
}

/** Time and size of PDF files, against the same library writing as many straight lines on as many pages. */
async function prints(): Promise<void> {
  const rows: string[][] = [];
  for (const { name, data } of printingCases) {
    const pages = laidOut(data), bytes = await written(pages), paths = pathsIn(bytes);
    const [layout, file, plain] = [await fastestRun(() => Promise.resolve(laidOut(data))), await fastestRun(() => written(pages)), await fastestRun(() => plainLines(pages.length, paths))];
    const size = await plainLines(pages.length, paths);
    rows.push([name, String(pages.length), String(paths), duration(layout), duration(file), ratio(file / plain), `${(bytes.length / 1024).toFixed(0)} kB`, ratio(bytes.length / size)]);
  }
  console.log("Printing: a template laid out on tiles, and its PDF against as many straight lines written by the same library");
  console.log(table(["", "pages", "paths", "layout", "PDF", "of plain lines", "size", "of plain lines"], rows));
  console.log();
}

/** Questions, keys and answers of classes of ten, twenty and thirty: time and size, and how they grow. */
async function classSets(): Promise<void> {
  const rows: string[][] = [], seconds: Record<ClassFile, number[]> = { question: [], key: [], answers: [] };
  for (const kind of CLASS_FILES) {
    for (const students of CLASS_SIZES) {
      const size = (await classFile(kind, students)).length;
      const time = await leastProcessorTime(() => classFile(kind, students), 4);
      seconds[kind].push(time);
      rows.push([`${kind} of ${students}`, duration(time), duration(time / students), `${(size / 1024).toFixed(0)} kB`, `${(size / 1024 / students).toFixed(1)} kB`]);
    }
  }
  console.log("A class set, time of the processor: own dimensions chosen, one scale for all, sheets on A3 with their codes, and the file");
  console.log(table(["", "time", "a student", "size", "a student"], rows));
  for (const kind of CLASS_FILES) console.log(`  ${kind}: time grows as students to the power ${growthExponent(CLASS_SIZES, seconds[kind]).toFixed(2)}`);
  console.log();
}

/** The 45 degree mitre, like against like: the cut alone, and the cut with its area and edge lengths against the whole development. */
async function againstKernel(): Promise<void> {
  const radius = mitre.part.diameter / 2;
  const piece = developed(mitre).pieces[0];
  if (!piece) throw new Error("the mitre is not made");
  const area = 2 * Math.PI * radius * mitreHeight;
  const off = (value: number) => (Math.abs(value - area) / area).toExponential(1);
  const kernels = kernelCuts(await loadKernel(), radius, mitre.part.length, mitreHeight);
  const rows = (own: Timing, answers: (one: KernelCut) => () => unknown) => kernels.map((one) => {
    const { fastest, median } = timed(answers(one));
    return [one.name, duration(fastest), ratio(fastest / own.fastest), duration(median), ratio(median / own.median), off(one.area())];
  });
  const cut = timed(() => trimPipe(piece.form, piece.cutters, piece.pattern.seam));
  const whole = timed(() => developed(mitre));
  const head = ["fastest", "of ours", "median", "of ours", "relative error of the area"];
  console.log("A 45 degree mitre, against a general-purpose B-rep kernel (OpenCASCADE as WebAssembly)");
  console.log(table(["the cut alone", ...head], [...rows(cut, (one) => one.cut), ["ours: edges, area, pieces", duration(cut.fastest), "", duration(cut.median), "", off(piece.trimmed.area)]]));
  console.log(table(["the cut, its area and edge lengths", ...head], [...rows(whole, (one) => one.measuredCut), ["ours: those, pattern, stations", duration(whole.fastest), "", duration(whole.median), "", off(piece.pattern.proof.areaFlat)]]));
  console.log();
}

function secondsPerSample(): number {
  const samples = 4096;
  let sum = 0;
  return secondsPerCall(() => {
    for (let i = 0; i < samples; i += 1) sum += Math.sin(i * 1e-3) + Math.cos(i * 1e-3) + Math.sqrt(i);
    return sum;
  }) / samples;
}
