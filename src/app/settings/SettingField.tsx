interface Props {
  readonly label: string;
  readonly value: string;
  readonly options: Readonly<Record<string, string>>;
  readonly choose: (value: string) => void;
}

/** A label and a choice. */
export function SettingField({ label, value, options, choose }: Props) {
  return (
    <label className="setting">
      <span>{label}</span>
      <select className="choice" value={value} onChange={(event) => choose(event.target.value)}>
        {Object.entries(options).map(([key, text]) => (
          <option key={key} value={key}>
            {text}
          </option>
        ))}
      </select>
    </label>
  );
}
