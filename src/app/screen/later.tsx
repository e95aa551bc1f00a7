import { lazy, Suspense, type ComponentProps, type ComponentType } from "react";
import { sayNotFetched } from "../store/changing";
import { useTouch } from "./touch";

/**
 * A part of the page that is fetched when it is first drawn. When it cannot be fetched that is said, and the rest of
 * the page stays.
 */
export function later<Props extends object>(fetch: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  const Part = lazy(async (): Promise<{ default: ComponentType<Props> }> => {
    try {
      return { default: await fetch() };
    } catch {
      sayNotFetched();
      return { default: () => null };
    }
  });
  return function Later(props: Props) {
    return (
      <Suspense fallback={null}>
        {/* Spread, because a lazy component's properties cannot be told from those of its own. */}
        <Part {...(props as ComponentProps<typeof Part>)} />
      </Suspense>
    );
  };
}

/** A part that nobody needs before a hand comes, or before the first drawing has been looked at for a while. */
export function afterTouch<Props extends object>(fetch: () => Promise<ComponentType<Props>>): ComponentType<Props> {
  const Part = later(fetch);
  return function AfterTouch(props: Props) {
    const touched = useTouch((state) => state.touched);
    return touched && <Part {...props} />;
  };
}
