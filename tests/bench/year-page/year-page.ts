// A page with nothing on it but years to time: the same lines as the bench runs in Node.

import denver from '../../../climates/denver.txt?raw';
import { readBundle } from '../../../src/weather/bundle-form.ts';
import { prepareClimate } from '../../../src/weather/prepared-climate.ts';
import { type Measured, measure } from '../measure.ts';
import { yearLines } from '../year-lines.ts';

const bundle = readBundle(denver);
if (!bundle.ok) throw new Error('climates/denver.txt does not read');
const lines = yearLines(prepareClimate(bundle.year));

const api = { measure: (rounds: number, warmUps: number): Measured[] => measure(lines, rounds, warmUps) };
declare global {
  interface Window {
    years: typeof api;
  }
}
window.years = api;
