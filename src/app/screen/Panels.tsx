import { later } from "./later";
import { usePanel } from "./panel";

// Loaded when first asked for.
const EarlierPanel = later(async () => (await import("../files/EarlierPanel")).EarlierPanel);
const ExamplesPanel = later(async () => (await import("../files/ExamplesPanel")).ExamplesPanel);
const ListPanel = later(async () => (await import("../check/list/ListPanel")).ListPanel);
const OutputPanel = later(async () => (await import("../output/OutputPanel")).OutputPanel);
const PhotoPanel = later(async () => (await import("../photo/PhotoPanel")).PhotoPanel);
const RollUpPanel = later(async () => (await import("../rollUp/RollUpPanel")).RollUpPanel);
const SettingsPanel = later(async () => (await import("../settings/SettingsPanel")).SettingsPanel);

const panels = { earlier: EarlierPanel, examples: ExamplesPanel, "marking-list": ListPanel, photo: PhotoPanel, print: OutputPanel, "roll-up": RollUpPanel, settings: SettingsPanel };

export function Panels() {
  const open = usePanel((state) => state.open);
  if (open === null) return null;
  const Open = panels[open];
  return <Open />;
}
