import type { Page } from "../../drawing/sheet";

/** Sets the paper of the print dialog to the size of this page; the returned function takes it back. */
export function setPageSize(page: Page | undefined): () => void {
  if (!page) return () => undefined;
  // A constructed sheet, because the page's security policy allows no inline style.
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@page { size: ${page.width}mm ${page.height}mm; margin: 0 }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
  };
}
