import { Component, type ReactNode } from "react";
import { saveNow } from "../files/saveNow";
import { changing } from "../store/changing";
import { words } from "../words/interface";

/** When a part of the page breaks: the job is kept, and can be saved before the page is loaded again. */
export class ErrorBoundary extends Component<{ children: ReactNode }, { broken: boolean }> {
  override state = { broken: false };

  static getDerivedStateFromError() {
    return { broken: true };
  }

  override render() {
    if (!this.state.broken) return this.props.children;
    const { broken } = words;
    return (
      <main className="broken" role="alert">
        <h1>{broken.title}</h1>
        <p>{broken.text}</p>
        <button type="button" className="verb" onClick={saveNow}>
          {broken.save}
        </button>
        <button type="button" className="verb" onClick={() => location.reload()}>
          {broken.reload}
        </button>
        <button
          type="button"
          className="verb"
          onClick={() => {
            changing((by) => {
              by.autosave.forget();
              location.reload();
            });
          }}
        >
          {broken.fresh}
        </button>
      </main>
    );
  }
}
