// Which way a finger means to go, by the first stretch of its way.

/** Shorter ways are a trembling hand [CSS px]. */
const DECIDED_PX = 6;

/** The way of a touch that has moved by so much; null while it is too short to tell. */
export function firstWay(dx: number, dy: number): 'across' | 'up' | null {
  if (Math.hypot(dx, dy) < DECIDED_PX) return null;
  return Math.abs(dx) > Math.abs(dy) ? 'across' : 'up';
}

/**
 * Whether a first move goes along a line rather than beside it; null while it is too short to tell. A line of no length
 * has no direction, so every move goes along it.
 */
export function isAlong(move: Way, line: Way): boolean | null {
  const long = Math.hypot(move.x, move.y);
  if (long < DECIDED_PX) return null;
  const steep = Math.hypot(line.x, line.y);
  return steep === 0 || Math.abs(move.x * line.x + move.y * line.y) >= Math.SQRT1_2 * long * steep;
}

interface Way {
  readonly x: number;
  readonly y: number;
}
