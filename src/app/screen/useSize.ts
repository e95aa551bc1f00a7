import { useEffect, useState, type RefObject } from "react";

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** The inner size of an element in CSS pixels, kept up to date; null until it is known. */
export function useSize(ref: RefObject<Element | null>): Size | null {
  const [size, setSize] = useState<Size | null>(null);
  useEffect(() => {
    const element = ref.current;
    if (!element) return;
    const measure = () => {
      const { clientWidth: width, clientHeight: height } = element;
      setSize((old) => (old?.width === width && old.height === height ? old : { width, height }));
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, [ref]);
  return size;
}
