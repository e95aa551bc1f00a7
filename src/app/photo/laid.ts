import { create } from "zustand";
import type { PaperRegion, Rectification } from "../../core/index";
import type { DrawnSize } from "./markedDrawing";
import { askToRectify } from "./pictureDesk";
import { usePhoto } from "./photo";

// The picture from straight above, as it lies under the pattern.

export interface LaidPicture {
  readonly url: string;
  readonly region: PaperRegion;
}

interface Laid {
  /** Whether it is to lie there. */
  readonly wanted: boolean;
  readonly picture: LaidPicture | null;
  readonly making: boolean;
  /** Whether the first element takes the focus when it lies there. */
  readonly focus: boolean;
  /** Parts of one: how much of it is seen. */
  readonly opacity: number;
}

export const useLaid = create<Laid>()(() => ({ wanted: false, picture: null, making: false, focus: false, opacity: 0.6 }));

/** Part of the stretch-out that is shown beside the drawing. */
const margin = 0.04;

let asked = 0;

/** Lays the picture under the pattern anew, by this rectification. */
export async function layPicture(rectification: Rectification, { width, height }: DrawnSize): Promise<void> {
  const number = ++asked;
  const beside = margin * width;
  const region = { left: -beside, right: width + beside, bottom: -beside, top: height + beside };
  useLaid.setState({ making: true });
  const said = await askToRectify(rectification, region).catch(() => null);
  if (number !== asked) return;
  if (said?.kind !== "rectified") {
    useLaid.setState({ making: false, wanted: false });
    usePhoto.setState(({ picture }) => ({ fault: { name: picture?.name ?? "", fault: { kind: "not-here" } } }));
    return;
  }
  takeUp();
  useLaid.setState({ making: false, picture: { url: URL.createObjectURL(said.blob), region } });
}

/** Takes the picture from under the pattern. */
export function takeUpPicture(): void {
  asked++;
  takeUp();
  useLaid.setState({ wanted: false, making: false });
}

function takeUp(): void {
  const { picture } = useLaid.getState();
  if (picture) URL.revokeObjectURL(picture.url);
  useLaid.setState({ picture: null });
}
