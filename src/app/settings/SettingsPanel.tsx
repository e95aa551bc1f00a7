import type { Job } from "../../core/index";
import { TRADE } from "../../drawing/tradeWords";
import { Panel } from "../screen/Panel";
import { selectJob } from "../store/select";
import { letterings, set, useSettings } from "../store/settings";
import { change } from "../store/changes";
import { useApp } from "../store/store";
import { panelWords } from "../words/panels";
import { SettingField } from "./SettingField";

const denominators = [0, 8, 16, 32, 64] as const;
const places = [0, 1, 2, 3] as const;

/** Units and projection are the job's; the rest stays on this device. */
export function SettingsPanel() {
  const job = useApp(selectJob);
  const settings = useSettings();
  const { settings: said } = panelWords;
  return (
    <Panel title={said.title}>
      <fieldset className="settings">
        <legend>{said.ofJob}</legend>
        <SettingField label={said.units} value={job.units} options={{ mm: said.mm, inch: said.inch }} choose={(units) => change((of) => ({ ...of, units: units as Job["units"] }), said.units)} />
        <SettingField
          label={said.projection}
          value={job.drawing.projection}
          options={{ first: said.first, third: said.third }}
          choose={(projection) => change((of) => ({ ...of, drawing: { ...of.drawing, projection: projection as Job["drawing"]["projection"] } }), said.projection)}
        />
      </fieldset>
      <fieldset className="settings">
        <legend>{said.ofDevice}</legend>
        {job.units === "inch" && (
          <SettingField
            label={said.inches}
            value={String(settings.denominator)}
            options={Object.fromEntries(denominators.map((one) => [one, one === 0 ? said.decimal : said.fractions(one)]))}
            choose={(value) => set("denominator", denominators.find((one) => String(one) === value) ?? 0)}
          />
        )}
        <SettingField
          label={said.places}
          value={String(settings.places)}
          options={Object.fromEntries(places.map((one) => [one, String(one)]))}
          choose={(value) => set("places", places.find((one) => String(one) === value) ?? 2)}
        />
        <SettingField label={said.mark} value={settings.comma ? "comma" : "point"} options={{ point: said.point, comma: said.comma }} choose={(value) => set("comma", value === "comma")} />
        <SettingField
          label={said.words}
          value={settings.words}
          options={Object.fromEntries(Object.entries(TRADE).map(([name, trade]) => [name, said.wordings(trade)]))}
          choose={(words) => set("words", words as typeof settings.words)}
        />
        <SettingField label={said.theme} value={settings.theme} options={{ auto: said.auto, light: said.light, dark: said.dark, contrast: said.contrast }} choose={(theme) => set("theme", theme as typeof settings.theme)} />
        <SettingField
          label={said.lettering}
          value={String(settings.lettering)}
          options={Object.fromEntries(letterings.map((one, i) => [one, said.letterings[i] ?? String(one)]))}
          choose={(value) => set("lettering", letterings.find((one) => String(one) === value) ?? 1)}
        />
      </fieldset>
    </Panel>
  );
}
