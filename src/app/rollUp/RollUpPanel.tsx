import { Panel } from "../screen/Panel";
import { rollUpWords } from "../words/rollUp";
import { RollUp } from "./RollUp";

/** CSS pixels a sheet millimetre: lines as bold as a panel's size suggests. */
const px = 3;

/** The roll-up where the board has no room for it. */
export function RollUpPanel() {
  return (
    <Panel title={rollUpWords.title}>
      <div className="roll-up-large">
        <RollUp px={px} />
      </div>
    </Panel>
  );
}
