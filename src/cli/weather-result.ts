// The weather a command runs in, or one line a fault.

import type { TypicalYear } from '../weather/typical-year.ts';

export type WeatherResult =
  | { readonly ok: true; readonly year: TypicalYear }
  | { readonly ok: false; readonly faults: readonly string[] };
