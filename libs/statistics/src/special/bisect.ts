/**
 * Where a function that rises changes its sign between two bounds, by halving to the last bit or 200 times.
 *
 * At a bound that it does not cross, that bound. Halving is slower than better methods and cannot fail.
 */
export const bisect = (rising: (x: number) => number, from: number, to: number): number => {
  let [low, high] = [from, to];
  for (let i = 0; i < 200; i += 1) {
    const middle = (low + high) / 2;
    if (middle === low || middle === high) break;
    if (rising(middle) < 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};
