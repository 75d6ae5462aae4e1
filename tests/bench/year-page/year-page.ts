// A page with nothing on it but years to time: the same lines as the bench runs in Node, and other ways to run one.

import denver from '../../../climates/denver.txt?raw';
import { EXAMPLES } from '../../../src/design/examples.ts';
import { modelOf } from '../../../src/model/from-design.ts';
import { readBundle } from '../../../src/weather/formats/bundle-form.ts';
import { prepareClimate } from '../../../src/weather/prepared/prepared-climate.ts';
import { type Measured, measure } from '../measure.ts';
import { otherWays } from '../other-ways.ts';
import { yearLines } from '../year-lines.ts';

const bundle = readBundle(denver);
if (!bundle.ok) throw new Error('climates/denver.txt does not read');
const climate = prepareClimate(bundle.year);
const closed = modelOf(EXAMPLES.find(({ id }) => id === 'closed')!.design, bundle.year.site, climate.ground);

const api = {
  measure: (rounds: number, warmUps: number): Measured[] => measure(yearLines(climate), rounds, warmUps),
  otherWays: (rounds: number, warmUps: number): Measured[] =>
    measure(otherWays(closed, climate), rounds, warmUps),
};
declare global {
  interface Window {
    years: typeof api;
  }
}
window.years = api;
