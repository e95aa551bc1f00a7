import { memo } from "react";
import type { Item, PathItem, TextItem } from "../../drawing/display";
import { PENS, type PenName } from "../../drawing/pens";
import { arrowheadData, pathData, surfaceData } from "../../output/svg/pathData";
import { textAttributes } from "../../output/svg/textAttributes";

/** One item of a display list as SVG. Width and dash come from the pen table; the style sheet gives each role its ink. */
export const ItemView = memo(function ItemView({ item }: { item: Item }) {
  switch (item.kind) {
    case "path":
      return <path d={pathData(item)} {...stroke(item.pen)} />;
    case "circle":
      return <circle cx={item.centre.x} cy={-item.centre.y} r={item.radius} {...stroke(item.pen)} />;
    case "text":
      return <TextView item={item} />;
    case "arrowhead":
      return <path d={arrowheadData(item)} className={`${roleClass(item.pen)} solid`} />;
    case "surface":
      return <path d={surfaceData(item)} fillRule="evenodd" className={`surface-${item.side}`} />;
    case "group":
      return <GroupView item={item} />;
  }
});

/** Items in their order, neighbouring lines of one pen as one element: for pages with a thousand lines that nobody points at. */
export const ItemsView = memo(function ItemsView({ items }: { items: readonly Item[] }) {
  return lineRuns(items).map((run, i) => (Array.isArray(run) ? <path key={i} d={run.map(pathData).join("")} {...stroke(run[0].pen)} /> : <ItemView key={i} item={run} />));
});

type Lines = [PathItem, ...PathItem[]];

function lineRuns(items: readonly Item[]): (Item | Lines)[] {
  const runs: (Item | Lines)[] = [];
  for (const item of items) {
    const last = runs.at(-1);
    if (item.kind !== "path") runs.push(item);
    else if (Array.isArray(last) && last[0].pen === item.pen) last.push(item);
    else runs.push([item]);
  }
  return runs;
}

function TextView({ item }: { item: TextItem }) {
  const { x, y, transform, "font-size": fontSize, "text-anchor": textAnchor } = textAttributes(item);
  return (
    <text x={x} y={y} transform={transform} fontSize={fontSize} textAnchor={textAnchor} className={`${roleClass(item.pen)} letters${item.clear ? " clear" : ""}`}>
      {item.text}
    </text>
  );
}

function GroupView({ item }: { item: Extract<Item, { kind: "group" }> }) {
  const { left, right, bottom, top } = item.clip;
  return (
    <svg x={left} y={-top} width={right - left} height={top - bottom} viewBox={`${left} ${-top} ${right - left} ${top - bottom}`} overflow="hidden">
      <g transform={`translate(${item.move.x} ${-item.move.y})`}>
        <ItemsView items={item.items} />
      </g>
    </svg>
  );
}

function stroke(pen: PenName) {
  const { width, dash } = PENS[pen];
  return { className: `${roleClass(pen)} line`, strokeWidth: width, strokeDasharray: dash.length ? dash.join(" ") : undefined };
}

function roleClass(pen: PenName): string {
  return `role-${PENS[pen].role.replaceAll(" ", "-")}`;
}
