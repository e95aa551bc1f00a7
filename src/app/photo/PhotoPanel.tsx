import { PAPER_NAMES } from "../../drawing/sheets/papers";
import { lookAt } from "../board/moving/moves";
import { useCheck, type Check } from "../check/useCheck";
import { useFormat } from "../quantity/useFormat";
import { closePanel } from "../screen/panel";
import { Panel } from "../screen/Panel";
import { SettingField } from "../settings/SettingField";
import { photoWords } from "../words/photo";
import { FoundWords } from "./FoundWords";
import { useLaid } from "./laid";
import { measureBy, usePhoto, type KnownBy, type Picture } from "./photo";
import { PictureView } from "./PictureView";
import { PointsTable } from "./PointsTable";
import { pointName } from "./pointName";
import { useMarkedDrawing } from "./useMarkedDrawing";

/** The photograph large, to mark in it points whose places on the paper are known. */
export function PhotoPanel() {
  const check = useCheck();
  const picture = usePhoto((photo) => photo.picture);
  return <Panel title={photoWords.panel}>{check && picture && <Marking check={check} picture={picture} />}</Panel>;
}

function Marking({ check, picture }: { check: Check; picture: Picture }) {
  const photo = usePhoto();
  const { trade } = useFormat();
  const marked = useMarkedDrawing(check);
  const { by, sheet, inHand } = photo;
  const ready = marked.found.kind === "found";
  return (
    <div className="photo-panel">
      <div className="photo-picture">
        <p className="photo-next" role="status">{inHand !== null && !photo.places[inHand] && photoWords.next(pointName(inHand, photo, trade))}</p>
        <PictureView picture={picture} found={marked.found} size={marked.size} />
      </div>
      <div className="photo-known">
        <div className="photo-by">
          <SettingField label={photoWords.by} value={by} options={photoWords.bys(trade)} choose={(value) => measureBy(value as KnownBy)} />
          {by === "sheet" && <SettingField label={photoWords.sheet} value={sheet} options={Object.fromEntries(PAPER_NAMES.map((name) => [name, name]))} choose={(value) => usePhoto.setState({ sheet: PAPER_NAMES.find((name) => name === value) ?? "A3" })} />}
        </div>
        <p className="found">{photoWords.byText(trade)[by]}</p>
        <PointsTable marked={marked} />
        <FoundWords marked={marked} check={check} />
        <button type="button" className="verb main-verb" disabled={!ready} onClick={lay}>{photoWords.close}</button>
      </div>
    </div>
  );
}

/** Lays the picture under the pattern and goes to look at it and to read it off. */
function lay(): void {
  useLaid.setState({ wanted: true, focus: true });
  lookAt("pattern");
  closePanel();
}
