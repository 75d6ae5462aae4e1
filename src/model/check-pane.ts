// Checks one pane of a model: areas against its wall, frame, glass, what it joins and what stands before it.

import { requireRange } from '../physics/require-range.ts';
import {
  requireAtLeastZero,
  requireEntries,
  requireFilm,
  requireFinite,
  requirePositive,
  requireShare,
  requireZoneName,
} from './check-number.ts';
import type { GlassSystem, Pane, PaneCover, Shading } from './model.ts';

/** Rounding allowed when glass fills its wall. */
const SLACK = 1 + 1e-9;

/** Refuse a pane by the first thing wrong with it. */
export function requirePane(pane: Pane, zoneIds: ReadonlySet<string>): void {
  const of = (what: string) => `pane '${pane.id}', ${what}`;
  requirePositive(of('areaM2'), pane.areaM2, 'm²');
  if (pane.wallM2 !== undefined) {
    requirePositive(of('wallM2'), pane.wallM2, 'm²');
    if (pane.areaM2 > pane.wallM2 * SLACK)
      throw new RangeError(
        `${of('areaM2')} is ${pane.areaM2} m²; allowed: at most its wall, ${pane.wallM2} m²`,
      );
  }
  if (!(pane.frameShare >= 0 && pane.frameShare < 1))
    throw new RangeError(`${of('frameShare')} is ${pane.frameShare}; allowed 0 to below 1`);
  requireAtLeastZero(of('frameUValue'), pane.frameUValue, 'W/(m²K)');
  requireGlass(of, pane.glass);
  requireRange(of('tiltDeg'), pane.tiltDeg, 0, 180, '°');
  requireFinite(of('azimuthDeg'), pane.azimuthDeg, '°');
  if (pane.from !== 'outdoors') requireZoneName(of('from'), pane.from, zoneIds);
  requireZoneName(of('to'), pane.to, zoneIds);
  if (pane.from === pane.to)
    throw new RangeError(`${of('to')} is '${pane.to}'; allowed: another zone than from`);
  if (pane.shading) requireShading(of, pane.shading);
  requireFilm(of('filmOutside'), pane.filmOutside);
  requireFilm(of('filmInside'), pane.filmInside);
  requireAtLeastZero(of('nightResistance'), pane.nightResistance, 'm²K/W');
  for (const cover of pane.covers ?? []) requireCover(of, pane, cover, zoneIds);
  requireShare(of('dirt'), pane.dirt);
  if (pane.lightRoom) {
    const { depthM, sillM, headM } = pane.lightRoom;
    requireAtLeastZero(of('lightRoom.depthM'), depthM, 'm');
    requireAtLeastZero(of('lightRoom.sillM'), sillM, 'm');
    if (!(headM > sillM && Number.isFinite(headM)))
      throw new RangeError(`${of('lightRoom.headM')} is ${headM} m; allowed: above the sill, ${sillM} m`);
  }
}

function requireCover(
  of: (what: string) => string,
  pane: Pane,
  cover: PaneCover,
  zoneIds: ReadonlySet<string>,
): void {
  const at = (what: string) => of(`cover '${cover.hand}', ${what}`);
  if (pane.from !== 'outdoors')
    throw new RangeError(`${at('pane from')} is '${pane.from}'; allowed: outdoors, to carry covers`);
  if (cover.place === 'between' && pane.glass.sheets === 1)
    throw new RangeError(`${at('place')} is 'between'; allowed: outside or inside of a single sheet`);
  requireShare(at('transmittance'), cover.transmittance);
  requireRange(at('reflectance'), cover.reflectance, 0, 1 - cover.transmittance, '');
  requireShare(at('coverage'), cover.coverage);
  requireAtLeastZero(at('resistance'), cover.resistance, 'm²K/W');
  const { months, sunW, aboveC, coldAboveC, mostWind } = cover.rule;
  requireEntries(at('rule.months'), months, 12, 0, '');
  months.forEach((share, month) => {
    requireShare(at(`rule.months[${month}]`), share);
  });
  requireAtLeastZero(at('rule.sunW'), sunW, 'W/m²');
  requireFinite(at('rule.aboveC'), aboveC, '°C');
  if (coldAboveC !== undefined) requireFinite(at('rule.coldAboveC'), coldAboveC, '°C');
  if (cover.rule.spares) requireZoneName(at('rule.spares.zone'), cover.rule.spares.zone, zoneIds);
  requireAtLeastZero(at('rule.mostWind'), mostWind, 'm/s');
}

function requireGlass(of: (what: string) => string, glass: GlassSystem): void {
  requirePositive(of('glass.sheetM'), glass.sheetM, 'm');
  requirePositive(of('glass.sheetConductivity'), glass.sheetConductivity, 'W/(m·K)');
  if (![1, 2, 3].includes(glass.sheets))
    throw new RangeError(`${of('glass.sheets')} is ${glass.sheets}; allowed 1, 2 or 3`);
  if (glass.sheets > 1 && glass.gapConductance === undefined)
    requirePositive(of('glass.gapM'), glass.gapM, 'm');
  if (glass.gapConductance !== undefined)
    requirePositive(of('glass.gapConductance'), glass.gapConductance, 'W/(m²K)');
  requireShare(of('glass.gapEmissivity'), glass.gapEmissivity);
  requireShare(of('glass.outsideEmissivity'), glass.outsideEmissivity);
  requireShare(of('glass.insideEmissivity'), glass.insideEmissivity);
  const { optics } = glass;
  if (optics.kind === 'clear') {
    requireRange(of('glass.optics.refractiveIndex'), optics.refractiveIndex, 1, 3, '');
    requireAtLeastZero(of('glass.optics.extinctionPerM'), optics.extinctionPerM, '1/m');
    return;
  }
  requireShare(of('glass.optics.solarTransmittance'), optics.solarTransmittance);
  requireRange(of('glass.optics.solarHeatGain'), optics.solarHeatGain, optics.solarTransmittance, 1, '');
}

function requireShading(of: (what: string) => string, shading: Shading): void {
  requirePositive(of('shading.widthM'), shading.widthM, 'm');
  requirePositive(of('shading.heightM'), shading.heightM, 'm');
  if (shading.overhang) {
    const { depthM, gapM, extendM } = shading.overhang;
    requireAtLeastZero(of('shading.overhang.depthM'), depthM, 'm');
    requireAtLeastZero(of('shading.overhang.gapM'), gapM, 'm');
    if (extendM !== Number.POSITIVE_INFINITY)
      requireAtLeastZero(of('shading.overhang.extendM'), extendM, 'm');
  }
  if (shading.fins) {
    requireAtLeastZero(of('shading.fins.depthM'), shading.fins.depthM, 'm');
    requireAtLeastZero(of('shading.fins.gapM'), shading.fins.gapM, 'm');
  }
  if (shading.seasonal) {
    requireEntries(of('shading.seasonal'), shading.seasonal, 12, 0, '');
    shading.seasonal.forEach((share, month) => {
      requireShare(of(`shading.seasonal[${month}]`), share);
    });
  }
}
