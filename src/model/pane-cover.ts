// What can be drawn over a pane, and when it is wanted: plain data of the model.

import type { OpeningControl } from './opening-control.ts';

/** When a cover is wanted drawn. */
export interface CoverRule {
  /** sun on the window; heat in the room while the sun is on the window; dusk to dawn; all the season */
  readonly drawnBy: 'sun' | 'heat' | 'night' | 'season';
  /** share that may be drawn by month, January first, 0…1 */
  readonly months: readonly number[];
  /** by sun and by heat: drawn above this much sun on the glass [W/m²] */
  readonly sunW: number;
  /** by heat: drawn above this; by night: not above it [°C], mean of air and radiant temperature */
  readonly aboveC: number;
  /** by heat, the same while it is cold outdoors, when a warm room is welcome; absent = as aboveC */
  readonly coldAboveC?: number;
  /** by heat: not drawn while this other zone, which wants the warmth, is below this [°C], as above */
  readonly spares?: { readonly zone: string; readonly belowC: number };
  /** taken in above this wind at 10 m [m/s] */
  readonly mostWind: number;
}

/** A blind, curtain, shutter, awning or plant before, within or behind a pane to outdoors. */
export interface PaneCover {
  /** covers of one hand, and zone, are drawn together */
  readonly hand: string;
  readonly place: 'outside' | 'between' | 'inside';
  /** solar, at normal incidence, of what is drawn, 0…1 */
  readonly transmittance: number;
  readonly reflectance: number;
  /** light comes through scattered, and no longer as a beam */
  readonly scatters: boolean;
  /** share of the glass it stands before when drawn, 0…1 */
  readonly coverage: number;
  /** added where it is drawn [m²K/W], at its side of the glass */
  readonly resistance: number;
  readonly rule: CoverRule;
  readonly control: OpeningControl;
}
