/**
 * Integral of `height` over one full turn by adaptive Simpson steps on many uneven panels. `height` may jump and may have upright tangents. It is
 * slow and without any knowledge of where those places are. `tolerance` bounds the whole estimated error, in the unit of height times radians.
 */
export function integrateTurn(height: (theta: number) => number, tolerance: number): number {
  const panels = 240;
  const edges = Array.from({ length: panels + 1 }, (_, index) => ((index + 0.31 * Math.sin(3 * index)) * 2 * Math.PI) / panels);
  const shift = edges[0]!;
  edges[panels] = shift + 2 * Math.PI;
  let sum = 0;
  for (let index = 0; index < panels; index += 1) {
    const [a, b] = [edges[index]!, edges[index + 1]!];
    const middle = (a + b) / 2;
    const values = [height(a), height(middle), height(b)] as const;
    sum += refined(height, a, b, values, simpson(a, b, values), { tolerance: tolerance / panels, depth: 44, agreed: false });
  }
  return sum;
}

type Values = readonly [number, number, number];

function simpson(a: number, b: number, [first, middle, last]: Values): number {
  return ((b - a) / 6) * (first + 4 * middle + last);
}

interface Aim { readonly tolerance: number; readonly depth: number; readonly agreed: boolean }

/** Halved until two halvings running agree with what they halve: one alone may agree by chance beside an upright tangent. */
function refined(height: (theta: number) => number, a: number, b: number, values: Values, whole: number, { tolerance, depth, agreed }: Aim): number {
  const middle = (a + b) / 2;
  const left: Values = [values[0], height((a + middle) / 2), values[1]];
  const right: Values = [values[1], height((middle + b) / 2), values[2]];
  const [first, second] = [simpson(a, middle, left), simpson(middle, b, right)];
  const change = first + second - whole;
  const agrees = Math.abs(change) <= 15 * tolerance;
  if (depth === 0 || (agrees && agreed)) return first + second + change / 15;
  const aim: Aim = { tolerance: tolerance / 2, depth: depth - 1, agreed: agrees };
  return refined(height, a, middle, left, first, aim) + refined(height, middle, b, right, second, aim);
}
