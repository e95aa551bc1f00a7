import { openPanel } from "../screen/panel";
import { takeUpPicture } from "./laid";
import { openPhoto } from "./photo";
import { readingAfresh, useReadingOff } from "./readingOff";

/** Opens a photograph and the panel to mark it in; one that cannot be opened is said in the margin. */
export async function openToMark(file: File): Promise<void> {
  if (!(await openPhoto(file))) return;
  takeUpPicture();
  useReadingOff.setState(readingAfresh);
  openPanel("photo");
}
