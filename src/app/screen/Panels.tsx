import { lazy, Suspense } from "react";
import { usePanel } from "./panel";

// Loaded when first asked for.
const EarlierPanel = lazy(() => import("../files/EarlierPanel").then((module) => ({ default: module.EarlierPanel })));
const ExamplesPanel = lazy(() => import("../files/ExamplesPanel").then((module) => ({ default: module.ExamplesPanel })));
const PrintPanel = lazy(() => import("../print/PrintPanel").then((module) => ({ default: module.PrintPanel })));
const RollUpPanel = lazy(() => import("../rollUp/RollUpPanel").then((module) => ({ default: module.RollUpPanel })));
const SettingsPanel = lazy(() => import("../settings/SettingsPanel").then((module) => ({ default: module.SettingsPanel })));

const panels = { earlier: EarlierPanel, examples: ExamplesPanel, print: PrintPanel, "roll-up": RollUpPanel, settings: SettingsPanel };

export function Panels() {
  const open = usePanel((state) => state.open);
  if (open === null) return null;
  const Open = panels[open];
  return (
    <Suspense fallback={null}>
      <Open />
    </Suspense>
  );
}
