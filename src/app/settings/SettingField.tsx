interface Props {
  readonly label: string;
  readonly value: string;
  readonly options: Readonly<Record<string, string>>;
  readonly choose: (value: string) => void;
  /** Its name in a table of help. */
  readonly help?: string;
}

/** A label and a choice. */
export function SettingField({ label, value, options, choose, help }: Props) {
  return (
    <label className="setting">
      <span>{label}</span>
      <select className="choice" data-help={help} value={value} onChange={(event) => choose(event.target.value)}>
        {Object.entries(options).map(([key, text]) => (
          <option key={key} value={key}>
            {text}
          </option>
        ))}
      </select>
    </label>
  );
}
