import { noExercise, parseJob, type Job } from "../../core/index";
import { leanJob } from "./leanJob";

// A student's piece in as few letters as may be, so that a code to be read by a camera stays coarse: what checking and marking need of its job,
// without what is as usual, compressed against the words that job files are made of (RFC 1951 with a dictionary), in the letters an address
// may hold (RFC 4648, section 5).

/** The words as they stand in a lean job, the likeliest last. A link names the version: what has been printed must be read for good. */
const WORDS_1 =
  '"inch","fabrication":{"purpose":"wrap","surface":"outside","hand":"opposite"},"marking":{"tolerance":0.5,"girth":"either"},"drawing":{"projection":"third"}' +
  ',"extra":[15,"critical":true,"face":"outside","turn":"right","long":true,"legs":[{"to":{"x":-,"z":,"centre":,"start":{"shape":"free","low":,"high":,"rising":"left"' +
  ',"position":"shape":"step""shape":"ogee""shape":"vee","angle":"shape":"nose""shape":"hollow","radius":,"kind":"shaped","end":"bottom","direction":90,"profile":{' +
  '"shape":"slot""shape":"rectangle","width":,"length":,"turn":},"through":"both","offset":{"id":"opening","kind":"opening","outline":{"shape":"round","diameter":40}' +
  ',"direction":270,"height":{"title":"","part":{"kind":"pipe","diameter":90,"basis":"mean","thickness":1,"length":220,"attitude":"lying","cuts":[{"id":"plane","kind":' +
  '"plane","end":"top","angle":35,"direction":180,"at":"high","height":220}]},"development":{"seam":{"at":"angle","angle":{"at":"longest"},"stations":16}}';

/** For a piece that brings its teacher's scheme along: the ready schemes too. A job's words come last here as well. */
const WORDS_2 =
  '"Girth and spacing""Front elevation, plan and end elevation of the piece""Uncut development: length, spaces, height""by":"eye""by":"angles"},{"id":"item-2","text":"","marks":0.5' +
  ',"marking":{"items":[{"id":"whole","text":"The whole sheet","marks":20},{"id":"seam","text":"Seam on the wrong line","marks":-5,"by":"seam"},{"id":"lengths","text":"Ordinate out' +
  ' of what is allowed","marks":-3,"by":"ordinates"},{"id":"hidden","text":"Hidden edge missing","marks":-2}]}}"marking":{"items":[{"id":"girth","text":"Stretch-out and spacing",' +
  '"marks":2,"by":"girth"},{"id":"ordinates","text":"Ordinates","marks":6,"by":"ordinates"},{"id":"angles","text":"Angle of the cut","marks":2,"by":"angles"}]}}"marking":{"items":' +
  '[{"id":"views","text":"Front, top and side view of the piece","marks":3},{"id":"plane","text":"Cut drawn at its angle, in its place","marks":1,"by":"angles"},{"id":"points",' +
  '"text":"Points of the cut marked and numbered in the views","marks":1},{"id":"plain","text":"Uncut flat pattern: length, spaces, height","marks":3,"by":"girth"},{"id":"carried",' +
  '"text":"Points of the cut carried over","marks":2,"by":"ordinates"},{"id":"finished","text":"Curve, openings and ends, bold over faint construction","marks":4},{"id":"neatness",' +
  '"text":"Dimensions, lettering, neatness","marks":1}]}}' + WORDS_1;

const WORDS: ReadonlyMap<string, string> = new Map([["1", WORDS_1], ["2", WORDS_2]]);

/** No piece takes more bytes than this, packed in letters or unpacked. */
const MOST = 60_000;

/** The piece as a part of an address: the version of the words, then what was compressed. `scheme`: with the items it is marked by. */
export async function packVariant(job: Job, { scheme = true }: { scheme?: boolean } = {}): Promise<string> {
  const { deflateSync, strToU8 } = await import("fflate");
  const items = scheme ? job.marking.items : [];
  const version = items.length > 0 ? "2" : "1";
  const { format: _format, version: _version, ...lean } = leanJob({ ...job, note: "", readings: null, exercise: noExercise(), marking: { ...job.marking, items } });
  const bytes = deflateSync(strToU8(JSON.stringify(lean)), { level: 9, dictionary: strToU8(WORDS.get(version) ?? "") });
  const letters = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  return `${version}${letters.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "")}`;
}

/** The piece of a part of an address; null when it holds none. */
export async function unpackVariant(packed: string): Promise<Job | null> {
  const words = WORDS.get(packed.slice(0, 1));
  if (words === undefined || packed.length > MOST) return null;
  const { inflateSync, strFromU8, strToU8 } = await import("fflate");
  try {
    const bytes = Uint8Array.from(atob(packed.slice(1).replaceAll("-", "+").replaceAll("_", "/")), (letter) => letter.charCodeAt(0));
    const lean: unknown = JSON.parse(strFromU8(inflateSync(bytes, { dictionary: strToU8(words), out: new Uint8Array(MOST) })));
    const parsed = parseJob({ ...(lean as object), format: "flatwright-job", version: 2 });
    return parsed.ok ? parsed.job : null;
  } catch {
    return null;
  }
}
