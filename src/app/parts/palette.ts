// Every colour that a script draws with. Pictures for paper and for files carry colours of their own, since no style
// sheet goes with them; what is drawn on the screen asks the page for a role of tokens.css. Hues that paper shares with
// the light screen, and those of the sheet, are the same here and there: tests/app/style/palette.test.ts compares them.

/** A role of tokens.css that a script draws with. */
export type ScreenColour =
  | '--ink'
  | '--ink-soft'
  | '--rule'
  | '--clay'
  | '--sky-deep'
  | '--sun-line'
  | '--sun-fill';

/** What a role is now, in the scheme around an element. */
export function screenColour(element: Element, role: ScreenColour): string {
  return getComputedStyle(element).getPropertyValue(role).trim();
}

/** The sheet of paper, `--sheet…` in tokens.css. */
export const SHEET = {
  ground: '#ffffff',
  ink: '#1d2022',
  inkSoft: '#4b4d4a',
  rule: '#cfc8b8',
} as const;

/** Roles of the light screen that paper shows in the same colour. */
export const SHARED = {
  clay: '#a8481c',
  skyDeep: '#2d6287',
  moss: '#4c6a35',
  fair: '#7d5a00',
  sun: '#c9821f',
  glass: '#2f7396',
  glassFill: '#cfe3ea',
  ruleStrong: '#8b8371',
  inkSoft: '#5a5c58',
} as const;

/** What is cut and seen in the section, on paper: pale, for ink lines and textures lie over it. */
export const SECTION = {
  soil: '#f4eee1',
  footing: '#e0d3bb',
  sunspace: '#f1f4ee',
  masonry: '#c3ab8d',
  lining: '#dccbb0',
  insulation: '#f7f3ea',
  timber: '#e6decd',
  person: '#77797a',
  bed: '#d2bda1',
  sunlight: '#f3dfae',
} as const;

/** Shades and lines of other pictures on paper. */
export const PICTURE = {
  sunArea: '#efe3c4',
  sunEdge: '#b39a5c',
  overheated: '#7a3b12',
} as const;

/** Causes of heat and moisture on paper, by their slots: the screen's `--cause-…`, paler where a texture lies over. */
export const CAUSE = {
  sun: '#e2ab3f',
  people: '#f0d9b8',
  heating: '#8f3413',
  cooling: '#1d4f73',
  dew: '#c4dbe4',
  air: '#9dbdd2',
  glass: '#1f506e',
  walls: '#d3c3ab',
  roof: '#b9ad9f',
  ground: '#c8ab8c',
  zones: '#e4e1d6',
  plants: '#a9c192',
  other: '#d8d6cd',
} as const;

/** Colours of the scales in colour-scale.ts, from the low end to the high: on paper and on the light screen. */
export const COMFORT_STOPS = [
  '#0e2442',
  '#2a5885',
  '#7caac9',
  '#cddee4',
  '#f4efe2',
  '#f3d9a8',
  '#e09642',
  '#b04e1c',
  '#52160a',
] as const;
export const HUMIDITY_STOPS = ['#faf4e2', '#d6e0cd', '#7aa896', '#2e6c70', '#0c2e42'] as const;
export const HEAT_STOPS = ['#f6f1e6', '#eccea0', '#be642d', '#52160a'] as const;

/** The same on the dark screen: what is nothing to mind is dark there, and what is far from it shines. */
export const COMFORT_STOPS_DARK = [
  '#d3ebfa',
  '#86bce0',
  '#4a83ad',
  '#33566f',
  '#262c31',
  '#5a4a2c',
  '#a86d2c',
  '#df7c45',
  '#ffcdab',
] as const;
export const HUMIDITY_STOPS_DARK = ['#23292c', '#2f4138', '#4f8672', '#77bcb6', '#cdeef0'] as const;
export const HEAT_STOPS_DARK = ['#23292c', '#5f4728', '#d27a3c', '#ffcdab'] as const;
