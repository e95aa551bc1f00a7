import { writeJobText, type Job } from "../../core/index";
import { fileName } from "./fileName";
import { saveText } from "./saveText";

/** Saves the job as a file, with what was read off a drawing of its piece; without, when that cannot be fetched. */
export async function saveJob(job: Job): Promise<void> {
  const whole = await import("../check/withReadings").then(({ withReadings }) => withReadings(job)).catch(() => job);
  saveText(fileName(job.title, "json"), "application/json", writeJobText(whole));
}
