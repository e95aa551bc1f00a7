import { memo } from "react";
import type { Page } from "../../drawing/sheets/page";
import { ItemsView } from "../board/ItemView";

/** One page of paper, small. */
export const PageView = memo(function PageView({ page: { name, width, height, items } }: { page: Page }) {
  return (
    <svg className="page-preview" viewBox={`0 ${-height} ${width} ${height}`} role="img" aria-label={name}>
      <ItemsView items={items} />
    </svg>
  );
});
