// The climates that come with the page: what each is. Their hours are in climate-texts.ts.

import catalogue from '../../../climates/index.json';

export interface BundledClimate {
  readonly id: string;
  readonly name: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  readonly elevationM: number;
  readonly character: string;
  readonly credit: string;
}

export const BUNDLED_CLIMATES: readonly BundledClimate[] = catalogue;

/** A bundled climate's row, or undefined. */
export function bundledClimate(id: string): BundledClimate | undefined {
  return BUNDLED_CLIMATES.find((climate) => climate.id === id);
}
