import { writeJobText, type Job } from "../../core/index";
import { fileName } from "./fileName";
import { saveText } from "./saveText";

export function saveJob(job: Job): void {
  saveText(fileName(job.title, "json"), "application/json", writeJobText(job));
}
