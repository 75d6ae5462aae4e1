// A scale of colours for the screen as it is now, light or dark. What reads it is drawn anew when that changes.

import { signal } from '@preact/signals';
import { type ColourScale, inDark } from './colour-scale.ts';

const query = matchMedia('(prefers-color-scheme: dark)');
const isDark = signal(query.matches);
query.addEventListener('change', () => {
  isDark.value = query.matches;
});

export function onScreen(scale: ColourScale): ColourScale {
  return isDark.value ? inDark(scale) : scale;
}
