// Surface coefficients of every element and pane, renewed once an hour from the temperatures of the hour before:
// convection inside by Alamdari–Hammond, long-wave inside through the zone's radiant node (Carroll), wind
// convection outside (ISO 6946, 4 + 4v), long-wave to sky, air and ground by tilt, gas gaps by EN 673 at the
// pane's tilt, night insulation from dusk to dawn. Writes conductances into the stepper; prescribed films stay.
// The two loops run 9000 times a year over every face, so they work on flat arrays, kept in locals, and call nothing.

import type { Film, Model } from '../../model/model.ts';
import { STEFAN_BOLTZMANN, ZERO_CELSIUS_K } from '../../physics/constants.ts';
import { outsideConvection } from '../../physics/films.ts';
import { windAtHeight } from '../../physics/wind-profile.ts';
import type { HourWeather } from '../hour/hour-weather.ts';
import type { EngineCapacity } from '../layout/engine-capacity.ts';
import { airHub, type Layout, type PaneChain, radiantHub, sheetResistance } from '../layout/layout.ts';
import { entry, nodeA, nodeB } from '../solver/network-index.ts';
import type { Stepper } from '../solver/stepper-interface.ts';
import { CONVECTION_ENTRIES, CONVECTION_PER_ROOT, convectionTable } from './convection-table.ts';
import { createCoverFilms } from './cover-films.ts';
import { exchangeAreas, type OutdoorSide, outdoorSidesOf, zoneSidesOf } from './film-sides.ts';
import { conductanceAt, type GapTable, gapTable } from './gap-table.ts';

/** Height of the wind that meets walls and low roofs [m], and the land around: farm and village. */
const WIND_HEIGHT_M = 2.5;
const WIND_TERRAIN = 'suburb';

export interface SurfaceFilms {
  /** take the faces of a laid-out model in; its network is in the stepper */
  load(model: Model, layout: Layout): void;
  /**
   * write this hour's conductances, open sides between zones among them, and outside boundary temperatures; refreshEnds() of
   * the stepper is to follow
   */
  renew(weather: HourWeather): void;
}

/** Prescribed coefficients as numbers, NaN where computed. */
const fixedConvection = (film: Film) => (film.kind === 'fixed' ? film.convection : Number.NaN);
const fixedRadiation = (film: Film) =>
  film.kind === 'fixed' && film.radiation !== 'computed' ? film.radiation : Number.NaN;

/**
 * Films written onto a stepper, with room for so many faces; load() before use.
 *
 * @param drawn by hand of covers, how far drawn, 0…1
 */
export function createFilms(capacity: EngineCapacity, stepper: Stepper, drawn: Float64Array): SurfaceFilms {
  const inside = createInside(2 * capacity.chains, stepper);
  const outside = createOutside(capacity.chains, stepper);
  const gaps = createGaps(capacity.panes, stepper);
  const covers = createCoverFilms(stepper, drawn);
  let zones = 0;
  let open: ReturnType<typeof exchangeAreas>['open'] = [];

  function load(model: Model, layout: Layout): void {
    zones = layout.zoneIds.length;
    const exchange = exchangeAreas(model, layout);
    open = exchange.open;
    inside.load(layout, exchange.faces);
    outside.load(outdoorSidesOf(layout, stepper));
    gaps.load(layout.panes);
    covers.load(layout);
  }

  function renew(weather: HourWeather): void {
    inside.renew(weather.darkShare);
    outside.renew(weather);
    covers.renew();
    gaps.renew();
    for (let i = 0; i < open.length; i++) {
      const { from, to, areaM2 } = open[i]!;
      const meanK = (stepper.hubC[radiantHub(from)]! + stepper.hubC[radiantHub(to)]!) / 2 + ZERO_CELSIUS_K;
      const conductance = 4 * STEFAN_BOLTZMANN * meanK * meanK * meanK * areaM2;
      stepper.hubLink[entry(radiantHub(from), radiantHub(to), 2 * zones)] = conductance;
      stepper.hubLink[entry(radiantHub(to), radiantHub(from), 2 * zones)] = conductance;
    }
  }

  return { load, renew };
}

/** Films to zones: convection from its table, long-wave by the zone's radiant temperature. */
function createInside(most: number, stepper: Stepper) {
  let count = 0;
  const faces = {
    slots: new Int32Array(most),
    nodes: new Int32Array(most),
    airs: new Int32Array(most),
    radiants: new Int32Array(most),
    areas: new Float64Array(most),
    exchanges: new Float64Array(most),
    nights: new Float64Array(most),
    convections: new Float64Array(most),
    radiations: new Float64Array(most),
    tables: new Float64Array(most * CONVECTION_ENTRIES),
  };

  function load(layout: Layout, exchange: ReadonlyMap<number, number>): void {
    const { slots, nodes, airs, radiants, areas, exchanges, nights, convections, radiations, tables } = faces;
    const sides = zoneSidesOf(layout, stepper, exchange);
    count = sides.length;
    sides.forEach((side, i) => {
      slots[i] = side.slot;
      nodes[i] = side.node;
      airs[i] = airHub(side.zone, layout.zoneIds.length);
      radiants[i] = radiantHub(side.zone);
      areas[i] = side.areaM2;
      exchanges[i] = side.exchangeM2;
      nights[i] = side.nightResistance;
      convections[i] = fixedConvection(side.film);
      radiations[i] = fixedRadiation(side.film);
      tables.set(convectionTable(side.faceTiltDeg, side.areaM2), i * CONVECTION_ENTRIES);
    });
  }

  function renew(darkShare: number): void {
    const { slots, nodes, airs, radiants, areas, exchanges, nights, convections, radiations, tables } = faces;
    const { nodeC, hubC, endHubG } = stepper;
    const half = (CONVECTION_ENTRIES - 1) / 2;
    const furthest = half - 1e-9;
    const last = count;
    for (let i = 0; i < last; i++) {
      const air = airs[i]!;
      const area = areas[i]!;
      let convection = convections[i]!;
      if (Number.isNaN(convection)) {
        const difference = nodeC[nodes[i]!]! - hubC[air]!;
        const root = Math.min(furthest, Math.sqrt(Math.abs(difference)) * CONVECTION_PER_ROOT);
        const place = difference < 0 ? half - root : half + root;
        const below = Math.floor(place);
        const at = i * CONVECTION_ENTRIES + below;
        convection = tables[at]! + (place - below) * (tables[at + 1]! - tables[at]!);
      }
      let radiation = radiations[i]! * area;
      if (Number.isNaN(radiation)) {
        const radiantK = hubC[radiants[i]!]! + ZERO_CELSIUS_K;
        radiation = 4 * STEFAN_BOLTZMANN * radiantK * radiantK * radiantK * exchanges[i]!;
      }
      convection *= area;
      if (darkShare > 0 && nights[i]! > 0) {
        const both = convection + radiation;
        const through = 1 - darkShare + darkShare / (1 + (both * nights[i]!) / area);
        convection *= through;
        radiation *= through;
      }
      endHubG[slots[i]!] = convection;
      endHubG[slots[i]! + 1] = radiation;
    }
  }

  return { load, renew };
}

/** Films to outdoors: wind, and ε σ (T₁² + T₂²)(T₁ + T₂) to sky, ground and air, as one equivalent temperature. */
function createOutside(most: number, stepper: Stepper) {
  let count = 0;
  const faces = {
    ends: new Int32Array(most),
    nodes: new Int32Array(most),
    areas: new Float64Array(most),
    emissivities: new Float64Array(most),
    skies: new Float64Array(most),
    grounds: new Float64Array(most),
    convections: new Float64Array(most),
    radiations: new Float64Array(most),
  };
  const windFactor = windAtHeight(1, WIND_HEIGHT_M, WIND_TERRAIN);

  function load(sides: readonly OutdoorSide[]): void {
    const { ends, nodes, areas, emissivities, skies, grounds, convections, radiations } = faces;
    count = sides.length;
    sides.forEach((side, i) => {
      ends[i] = side.end;
      nodes[i] = side.node;
      areas[i] = side.areaM2;
      // A face that sees neither sun nor sky exchanges with air alone, and without long-wave of its own.
      emissivities[i] = side.exposed ? side.emissivity : 0;
      skies[i] = side.skyShare;
      grounds[i] = side.groundShare;
      convections[i] = fixedConvection(side.film);
      const fixed = fixedRadiation(side.film);
      radiations[i] = !side.exposed && Number.isNaN(fixed) ? 0 : fixed;
    });
  }

  function renew(weather: HourWeather): void {
    const { ends, nodes, areas, emissivities, skies, grounds, convections, radiations } = faces;
    const { nodeC, endBoundary, endBoundaryC } = stepper;
    const { dryBulbC, skyC } = weather;
    const groundC = dryBulbC;
    const last = count;
    const airK = dryBulbC + ZERO_CELSIUS_K;
    const skyK = skyC + ZERO_CELSIUS_K;
    const groundK = groundC + ZERO_CELSIUS_K;
    const windy = outsideConvection(weather.windSpeed * windFactor);
    for (let i = 0; i < last; i++) {
      const k = nodeC[nodes[i]!]! + ZERO_CELSIUS_K;
      const k2 = k * k;
      const grey = emissivities[i]! * STEFAN_BOLTZMANN;
      let sky = grey * skies[i]! * (k2 + skyK * skyK) * (k + skyK);
      let ground = grey * grounds[i]! * (k2 + groundK * groundK) * (k + groundK);
      let air = grey * (1 - skies[i]! - grounds[i]!) * (k2 + airK * airK) * (k + airK);
      const radiation = radiations[i]!;
      if (!Number.isNaN(radiation)) {
        // A prescribed radiation coefficient keeps the directions and replaces their sum.
        const sum = sky + ground + air;
        const scale = sum > 0 ? radiation / sum : 0;
        sky *= scale;
        ground *= scale;
        air = sum > 0 ? air * scale : radiation;
      }
      const convection = Number.isNaN(convections[i]!) ? windy : convections[i]!;
      const all = convection + sky + ground + air;
      endBoundary[ends[i]!] = all * areas[i]!;
      endBoundaryC[ends[i]!] = ((convection + air) * dryBulbC + sky * skyC + ground * groundC) / all;
    }
  }

  return { load, renew };
}

/** Gas gaps by EN 673; with three sheets both gaps take the mean of the two. */
function createGaps(most: number, stepper: Stepper) {
  let count = 0;
  const gaps = {
    chains: new Int32Array(most),
    firsts: new Int32Array(most),
    lasts: new Int32Array(most),
    areas: new Float64Array(most),
    sheetResistances: new Float64Array(most),
  };
  let tables: GapTable[] = [];

  function load(places: readonly PaneChain[]): void {
    const { chains, firsts, lasts, areas, sheetResistances } = gaps;
    const { link, first } = stepper;
    count = 0;
    tables = [];
    for (const { pane, chain, glassM2 } of places) {
      const { glass } = pane;
      const [start, end] = [nodeA(first, chain), nodeB(first, chain)];
      const resistance = sheetResistance(glass);
      if (glass.sheets === 1 || glass.gapConductance !== undefined) {
        const gap = glass.sheets === 1 ? 0 : 1 / glass.gapConductance!;
        for (let i = start; i < end; i++) link[i] = glassM2 / (gap + resistance);
        stepper.refreshChain(chain);
        continue;
      }
      chains[count] = chain;
      firsts[count] = start;
      lasts[count] = end;
      areas[count] = glassM2;
      sheetResistances[count] = resistance;
      tables.push(gapTable(glass, pane.tiltDeg));
      count++;
    }
  }

  function renew(): void {
    const { chains, firsts, lasts, areas, sheetResistances } = gaps;
    const { nodeC, link } = stepper;
    for (let p = 0; p < count; p++) {
      const start = firsts[p]!;
      const end = lasts[p]!;
      const outer = nodeC[start]!;
      const inner = nodeC[end]!;
      const gap = conductanceAt(tables[p]!, (outer + inner) / 2, (inner - outer) / (end - start));
      const between = areas[p]! / (1 / gap + sheetResistances[p]!);
      for (let i = start; i < end; i++) link[i] = between;
      stepper.refreshChain(chains[p]!);
    }
  }

  return { load, renew };
}
