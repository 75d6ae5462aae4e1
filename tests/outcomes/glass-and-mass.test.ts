import { describe, expect, it } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import type { Element, Layer, Model, ZoneFace } from '../../src/model/model.ts';
import { equatorGlass, massInside } from '../../src/outcomes/glass-and-mass.ts';
import { hourly, madePane, madeYear } from './made-year.ts';

const layer = (name: string, thicknessM: number, conductivity: number, density: number): Layer => ({
  name,
  thicknessM,
  conductivity,
  density,
  specificHeat: 1000,
});
const INSULATION = layer('Mineral wool', 0.15, 0.037, 40);
const CONCRETE = layer('Concrete', 0.1, 1.75, 2300);
const CARPET = layer('Carpet', 0.01, 0.06, 200);
const SOIL = layer('Soil, clay or silt', 2, 1.5, 1500);

const roomFace: ZoneFace = {
  kind: 'zone',
  zone: 'house',
  absorptance: 0.6,
  emissivity: 0.9,
  film: { kind: 'computed' },
  lit: 'none',
  faceTiltDeg: 90,
};
const element = (layers: readonly Layer[], a: Element['a'] = { kind: 'adiabatic' }): Element => ({
  id: 'x',
  areaM2: 10,
  layers,
  a,
  b: roomFace,
});
const model = (...elements: Element[]): Model => ({
  name: 'm',
  zones: [],
  elements,
  panes: [],
  openings: [],
});

describe('mass inside the insulation', () => {
  it('counts a slab: 10 m² of 100 mm concrete is 1 m³, 2300 kg, 2300 kJ/K', () => {
    const mass = massInside(model(element([CONCRETE])), 4);
    expect(mass.volumeM3).toBeCloseTo(1, 12);
    expect(mass.heatCapacityKWhPerK).toBeCloseTo(2300 / 3600, 12);
    expect(mass.kgPerM2Glass).toBeCloseTo(575, 12);
  });

  it('leaves out what stands beyond the insulation, and the soil', () => {
    const mass = massInside(model(element([CONCRETE, INSULATION, CONCRETE]), element([SOIL, CONCRETE])), 4);
    expect(mass.volumeM3).toBeCloseTo(2, 12);
  });

  it('reaches through carpet and counts a wall between two rooms whole', () => {
    const common = element([CONCRETE, INSULATION, CONCRETE], { ...roomFace, zone: 'sunspace' });
    expect(massInside(model(element([CONCRETE, CARPET]), common), 4).volumeM3).toBeCloseTo(3, 12);
  });

  it('has no ratio without glass', () => {
    expect(massInside(model(element([CONCRETE])), 0).kgPerM2Glass).toBeNull();
  });
});

describe('the equator-facing glass', () => {
  it('gives shares of both references and sums only its own panes', () => {
    const leaning = EXAMPLES.find(({ id }) => id === 'leaning')!.design;
    const year = madeYear({
      panes: [
        madePane('front-1', { incidentW: hourly(100), transmittedW: hourly(50) }),
        madePane('front-inner', { from: 'sunspace', incidentW: hourly(1e6), transmittedW: hourly(1e6) }),
        madePane('east', { incidentW: hourly(1e6), transmittedW: hourly(1e6) }),
      ],
    });
    const glass = equatorGlass(leaning, year);
    expect(glass.areaM2).toBe(38);
    expect(glass.shareOfFloor).toBeCloseTo(38 / 110, 12);
    expect(glass.shareOfWall).toBeCloseTo(38 / (13.5 * 2.6), 12);
    expect(glass.tiltDeg).toBe(60);
    expect(glass.incidentKWh).toBeCloseTo(876, 9);
    expect(glass.transmittedKWh).toBeCloseTo(438, 9);
  });
});
