import { useEffect, useRef } from "react";
import { sheetKey, useSheets } from "../check/sheets";
import type { Check } from "../check/useCheck";
import { useFormat } from "../quantity/useFormat";
import { openPanel } from "../screen/panel";
import { photoWords } from "../words/photo";
import { FoundWords } from "./FoundWords";
import { layPicture, takeUpPicture, useLaid } from "./laid";
import { OpenPicture } from "./OpenPicture";
import { putPhotoAway, usePhoto } from "./photo";
import { ReadingFields } from "./ReadingFields";
import { readingAfresh, useReadingOff } from "./readingOff";
import { useMarkedDrawing } from "./useMarkedDrawing";
import "../theme/photo.css";

/** In the margin: a photograph of the drawing opened, marked, and read off on the board. */
export function PhotoPart({ check }: { check: Check }) {
  const picture = usePhoto((photo) => photo.picture);
  const marked = useMarkedDrawing(check);
  useLaying(marked);
  useOwner(check);
  const laid = useLaid((state) => state.picture !== null);
  const making = useLaid((state) => state.making);
  const { trade } = useFormat();
  return (
    <fieldset className="photo-part">
      <legend>{photoWords.title}</legend>
      {!picture && <p className="found">{photoWords.text} {photoWords.how}</p>}
      {picture && <p className="found">{picture.name}</p>}
      <div className="check-verbs">
        <OpenPicture />
        {picture && (
          <>
            <button type="button" className="verb" onClick={() => openPanel("photo")}>{photoWords.mark}</button>
            <button type="button" className="verb" onClick={putAway}>{photoWords.away}</button>
          </>
        )}
      </div>
      {picture && <FoundWords marked={marked} check={check} />}
      {making && !laid && <p className="found" role="status">{photoWords.laying}</p>}
      {picture && laid && <ReadingFields check={check} trade={trade} />}
    </fieldset>
  );
}

/** Keeps the picture under the pattern as the marks and the scale of the drawing have it. */
function useLaying({ found, size }: ReturnType<typeof useMarkedDrawing>): void {
  const wanted = useLaid((state) => state.wanted);
  const rectification = found.kind === "found" ? found.rectification : null;
  // By value: what does not move the picture does not make it anew.
  const key = wanted && rectification ? JSON.stringify([rectification.toPicture, rectification.lens, size]) : null;
  useEffect(() => {
    if (key !== null && rectification) void layPicture(rectification, size);
    // eslint-disable-next-line react-hooks/exhaustive-deps -- the key says it all
  }, [key]);
}

/** Another piece or student: what was read goes with their sheet, and the picture of one student is not read for another. */
function useOwner({ job }: Check): void {
  const student = useSheets((state) => state.student);
  const id = student?.id ?? null;
  const key = sheetKey(job, student);
  const before = useRef({ id, key });
  useEffect(() => {
    if (before.current.key !== key) useReadingOff.setState(readingAfresh);
    if (before.current.id !== id) putAway();
    before.current = { id, key };
  }, [id, key]);
}

function putAway(): void {
  takeUpPicture();
  putPhotoAway();
}
