// A hotter or colder year in a few words, for findings, the list of inputs and the marks beside results.

import type { Hotter } from '../design/design.ts';
import type { Wording } from './wording.ts';

/** For example "1.5 °C warmer in winter and 3 °C in summer, with a heat wave of 10 days, 5 °C hotter". */
export function hotterWords({ winterK, summerK, waveDays, waveK }: Hotter, words: Wording): string {
  const by = (kelvin: number) => `${words.degrees(Math.abs(kelvin))} ${kelvin < 0 ? 'colder' : 'warmer'}`;
  const sameWay = winterK < 0 === summerK < 0;
  const warmer =
    winterK === summerK
      ? `${by(winterK)} all year`
      : winterK === 0
        ? `${by(summerK)} in summer`
        : summerK === 0
          ? `${by(winterK)} in winter`
          : `${by(winterK)} in winter and ${sameWay ? words.degrees(Math.abs(summerK)) : by(summerK)} in summer`;
  const wave = `a heat wave of ${waveDays} days, ${words.degrees(waveK)} hotter`;
  const shifts = winterK !== 0 || summerK !== 0;
  if (!shifts) return `with ${wave}`;
  return waveK > 0 ? `${warmer}, with ${wave}` : warmer;
}
