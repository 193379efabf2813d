import { randomOf, type Random } from '../plan/random.js';
import { dotsOf } from './letters.js';
import { writePng } from './write-png.js';

const [WIDTH, HEIGHT] = [640, 480];
/** Height of the band below the picture that says what it is, px. */
const BAND = 48;
const WORDS = 'INVENTED DRAWING NO PHOTO';
const DOT = 4;

/** What is to be seen: domes under a gel coat, or hollows in a laminate. */
export type Seen = 'blisters' | 'voids';

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Draws what a photo of a defect might show, as PNG: the same bytes for the same name. It says of itself that it is invented. */
export const inventedPhoto = (name: string, seen: Seen): Buffer => {
  const random = randomOf(`drawing ${name}`);
  const greys = new Uint8Array(WIDTH * HEIGHT);
  for (let y = 0; y < HEIGHT; y += 1)
    for (let x = 0; x < WIDTH; x += 1)
      greys[y * WIDTH + x] = grey(surface(seen, x, y) + (seen === 'voids' ? 14 : 5) * (random.next() - 0.5));
  for (const spot of spotsOf(seen, random)) paint(greys, spot, seen);
  label(greys);
  return writePng(WIDTH, HEIGHT, greys);
};

const grey = (value: number): number => Math.max(0, Math.min(255, Math.round(value)));

/** A gel coat shines and darkens away from the lamp; a laminate shows its weave. */
const surface = (seen: Seen, x: number, y: number): number => {
  const away = ((x - 0.3 * WIDTH) ** 2 + (y - 0.25 * HEIGHT) ** 2) / WIDTH ** 2;
  if (seen === 'blisters') return 226 - 70 * away;
  const weave = (Math.floor((x + y) / 9) + Math.floor((x - y + HEIGHT) / 9)) % 2 === 0 ? 10 : -10;
  return 168 - 50 * away + weave;
};

const spotsOf = (seen: Seen, random: Random): readonly Spot[] =>
  Array.from({ length: seen === 'blisters' ? 26 : 5 }, () => ({
    x: random.between(30, WIDTH - 30),
    y: random.between(30, HEIGHT - BAND - 40),
    radius: random.between(seen === 'blisters' ? 8 : 10, seen === 'blisters' ? 26 : 34),
  }));

/** The lamp is above on the left: a dome is bright there and throws a shadow, a hollow is the other way round. */
const paint = (greys: Uint8Array, { x, y, radius }: Spot, seen: Seen): void => {
  const up = seen === 'blisters' ? 1 : -1;
  for (let row = Math.floor(y - radius); row <= y + radius; row += 1)
    for (let column = Math.floor(x - radius); column <= x + radius; column += 1) {
      const [across, down] = [(column - x) / radius, (row - y) / radius];
      const out = across * across + down * down;
      if (out > 1 || row < 0 || column < 0 || column >= WIDTH || row >= HEIGHT) continue;
      const at = row * WIDTH + column;
      const slope = -(across + down) * Math.sqrt(out) * 55 * up;
      greys[at] = grey((greys[at] ?? 0) + slope - (seen === 'voids' ? 45 * (1 - out) : 0));
    }
};

const label = (greys: Uint8Array): void => {
  greys.fill(20, (HEIGHT - BAND) * WIDTH);
  const [left, top] = [Math.floor((WIDTH - WORDS.length * 6 * DOT) / 2), HEIGHT - BAND + 10];
  for (const [column, row] of dotsOf(WORDS))
    for (let y = 0; y < DOT; y += 1) {
      const at = (top + row * DOT + y) * WIDTH + left + column * DOT;
      greys.fill(245, at, at + DOT);
    }
};
