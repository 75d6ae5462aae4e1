import type { Schedule } from '../../src/model/model.ts';

/** The same value at all times. */
export function always(value: number): Schedule {
  return { workday: new Array<number>(24).fill(value) };
}
