import { useEffect } from "react";
import { BoardView } from "./board/BoardView";
import { Description } from "./description/Description";
import { FileDrop } from "./files/FileDrop";
import { Header } from "./header/Header";
import { Rod } from "./rod/Rod";
import { Banner } from "./screen/Banner";
import { ErrorBoundary } from "./screen/ErrorBoundary";
import { later } from "./screen/later";
import { openPanel } from "./screen/panel";
import { Panels } from "./screen/Panels";
import { usePurpose } from "./store/purpose";
import { words } from "./words/interface";

const CheckMargin = later(async () => (await import("./check/CheckMargin")).CheckMargin);
const TeachMargin = later(async () => (await import("./teach/TeachMargin")).TeachMargin);

/** The whole screen: description, or what the purpose puts in its place, in the margin, the board, the girth rod along the foot. */
export function App() {
  usePrintKey();
  const purpose = usePurpose((state) => state.purpose);
  return (
    <ErrorBoundary>
      <div className="app">
        <Header />
        <Banner />
        <main className="desk">
          {purpose === "teach" ? <TeachMargin /> : purpose === "check" ? <CheckMargin /> : <Description />}
          <BoardView />
          <Rod />
        </main>
      </div>
      <Panels />
      <FileDrop />
      <p className="print-hint">{words.printHint}</p>
    </ErrorBoundary>
  );
}

/** The keys that print open the print panel. */
function usePrintKey(): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      if (event.key.toLowerCase() !== "p" || !(event.ctrlKey || event.metaKey)) return;
      event.preventDefault();
      openPanel("print");
    };
    window.addEventListener("keydown", onKeyDown);
    return () => window.removeEventListener("keydown", onKeyDown);
  }, []);
}
