import { memo } from "react";
import type { Page } from "../../drawing/sheet";
import { ItemView } from "../board/ItemView";

/** One page of paper: its box is exactly as large as the paper, or small in the panel. */
export const PageView = memo(function PageView({ page, preview = false }: { page: Page; preview?: boolean }) {
  const { width, height } = page;
  return (
    <svg
      className={preview ? "page-preview" : "page"}
      viewBox={`0 ${-height} ${width} ${height}`}
      {...(preview ? { role: "img", "aria-label": page.name } : { width: `${width}mm`, height: `${height}mm` })}
    >
      {page.items.map((item, i) => (
        <ItemView key={i} item={item} />
      ))}
    </svg>
  );
});
