import type { Vec2 } from "../../core/index";
import { TextField } from "../check/TextField";
import { useFormat } from "../quantity/useFormat";
import { photoWords } from "../words/photo";
import type { Marked } from "./markedDrawing";
import { addPoint, isAdded, placeable, placePoint, removePoint, takePoint, typePoint, usePhoto } from "./photo";
import { PixelField } from "./PixelField";
import { pointName } from "./pointName";

const axes = ["x", "y"] as const;

/** The known points: which is in hand, where it is in the picture and on the paper, and what it is off by. */
export function PointsTable({ marked: { corners, faults, found } }: { marked: Marked }) {
  const photo = usePhoto();
  const format = useFormat();
  const { trade } = format;
  return (
    <>
      <table className="photo-points">
        <caption>{photoWords.table.caption(format.unit)}</caption>
        <thead>
          <tr>
            <th scope="col">{photoWords.table.point}</th>
            <th scope="col" colSpan={2}>{photoWords.table.picture}</th>
            <th scope="col" colSpan={2}>{photoWords.table.paper}</th>
            <th scope="col" className="off">{photoWords.table.off}</th>
          </tr>
        </thead>
        <tbody>
          {placeable(photo).map((id, i) => {
            const name = pointName(id, photo, trade);
            const point = photo.points.find((one) => one.id === id);
            const place: Vec2 | undefined = photo.places[id];
            const known = point && point.corner !== null ? corners?.[point.corner] : undefined;
            const residual = found.kind === "found" && found.judged ? found.residuals[id] : undefined;
            return (
              <tr key={id} data-in-hand={photo.inHand === id || undefined}>
                <th scope="row">
                  <button type="button" className="verb" aria-pressed={photo.inHand === id} onClick={() => takePoint(id)}>
                    {i + 1} {name}
                  </button>
                </th>
                {axes.map((axis) => (
                  <td key={axis}>
                    <PixelField label={photoWords.pixel(name, axis)} value={place?.[axis]} change={(value) => placePoint(id, { x: place?.x ?? 0, y: place?.y ?? 0, [axis]: value })} />
                  </td>
                ))}
                {point ? axes.map((axis) => (
                  <td key={axis}>
                    <TextField label={photoWords.onPaper(name, axis)} text={point[axis]} quantity="length" fault={faults[`${id} ${axis}`]} hint={known ? format.figure(known[axis], "length") : ""} change={(text) => typePoint(id, { [axis]: text })} />
                  </td>
                )) : <td colSpan={2} />}
                <td className="off">
                  {residual !== undefined && format.length(residual)}
                  {((point && isAdded(point) && photo.inHand === id) || (place && residual === undefined && photo.inHand === id)) && (
                    <button type="button" className="verb" aria-label={photoWords.removeOf(name)} onClick={() => removePoint(id)}>{photoWords.remove}</button>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p className="check-verbs">
        <button type="button" className="verb" onClick={addPoint}>{photoWords.add}</button>
      </p>
    </>
  );
}
