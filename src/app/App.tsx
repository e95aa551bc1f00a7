import { useEffect } from "react";
import { BoardView } from "./board/BoardView";
import { Description } from "./description/Description";
import { FileDrop } from "./files/FileDrop";
import { Header } from "./header/Header";
import { Rod } from "./rod/Rod";
import { Banner } from "./screen/Banner";
import { ErrorBoundary } from "./screen/ErrorBoundary";
import { openPanel } from "./screen/panel";
import { Panels } from "./screen/Panels";
import { words } from "./words/interface";

/** The whole screen: description in the margin, the board, the girth rod along the foot. */
export function App() {
  usePrintKey();
  return (
    <ErrorBoundary>
      <div className="app">
        <Header />
        <Banner />
        <main className="desk">
          <Description />
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
