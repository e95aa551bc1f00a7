import { createRoot } from "react-dom/client";
import { create } from "zustand";

// The smallest page that uses react, react-dom and zustand: the measure for the size of the first load.
const useStore = create<{ readonly text: string }>()(() => ({ text: "" }));

function Empty() {
  const text = useStore((state) => state.text);
  return <p>{text}</p>;
}

const place = document.getElementById("root");
if (place) createRoot(place).render(<Empty />);
