import { useRef } from "react";
import { photoWords } from "../words/photo";
import { openToMark } from "./openToMark";
import { usePhoto } from "./photo";

/** The verb that opens a photograph, and what is said when it cannot be. */
export function OpenPicture() {
  const file = useRef<HTMLInputElement>(null);
  const isOpen = usePhoto(({ picture }) => picture !== null);
  const opening = usePhoto((photo) => photo.opening);
  const fault = usePhoto((photo) => photo.fault);
  return (
    <>
      <button type="button" className="verb" disabled={opening !== null} onClick={() => file.current?.click()}>
        {isOpen ? photoWords.another : photoWords.open}
      </button>
      <input
        ref={file}
        className="unseen"
        type="file"
        accept="image/jpeg,image/png,image/webp"
        aria-label={photoWords.file}
        tabIndex={-1}
        onChange={(event) => {
          const [chosen] = event.target.files ?? [];
          // Cleared, so that the same file can be chosen again.
          event.target.value = "";
          if (chosen) void openToMark(chosen);
        }}
      />
      {opening !== null && <p className="found" role="status">{photoWords.opening(opening)}</p>}
      {fault && <p className="fault" role="alert">{photoWords.notOpened(fault.name)} {photoWords.fault(fault.fault)}</p>}
    </>
  );
}
