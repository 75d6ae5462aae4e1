// A year as a small picture of 365 × 24 points, without pointer or legend; the map and the comparison share it.

import { useEffect, useRef } from 'preact/hooks';
import { HOURS } from '../../weather/typical-year.ts';
import { type ColourScale, colourOf } from '../parts/colour-scale.ts';

const DAYS = 365;

export function YearPicture({ hours, scale }: { hours: Float64Array; scale: ColourScale }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (canvas.current) paintYear(canvas.current, hours, scale);
  }, [hours, scale]);
  return <canvas ref={canvas} class="year-picture" width={DAYS} height={24} />;
}

/** One pixel an hour, midnight at the bottom; the browser scales it without smoothing. */
export function paintYear(canvas: HTMLCanvasElement, hours: Float64Array, scale: ColourScale): void {
  const context = canvas.getContext('2d');
  if (!context) return;
  const image = context.createImageData(DAYS, 24);
  for (let hour = 0; hour < HOURS; hour++) {
    const at = ((23 - (hour % 24)) * DAYS + Math.floor(hour / 24)) * 4;
    const [r, g, b] = colourOf(hours[hour]!, scale);
    image.data[at] = r;
    image.data[at + 1] = g;
    image.data[at + 2] = b;
    image.data[at + 3] = 255;
  }
  context.putImageData(image, 0, 0);
}
