// Catalogue of opaque materials. Rows give conductivity, density, specific heat, solar absorptance of a bare
// face and moisture buffer value; sources stand on each row. "10456" = ISO 10456:2007 tables 3 and 4, from
// memory with high confidence; "review" = ranges of published reviews, from memory with medium confidence.

export interface Material {
  readonly id: string;
  readonly name: string;
  /** thermal conductivity [W/(m·K)] */
  readonly conductivity: number;
  /** density [kg/m³] */
  readonly density: number;
  /** specific heat [J/(kg·K)] */
  readonly specificHeat: number;
  /** solar absorptance of the bare face, 0…1 */
  readonly absorptance: number;
  /** practical moisture buffer value of the bare face [g/(m²·%RH)] */
  readonly moistureBuffer: number;
  /** offered as a thermal-mass material in the design */
  readonly mass: boolean;
  readonly source: string;
}

const row = (
  id: string,
  name: string,
  conductivity: number,
  density: number,
  specificHeat: number,
  absorptance: number,
  moistureBuffer: number,
  mass: boolean,
  source: string,
): Material => ({
  id,
  name,
  conductivity,
  density,
  specificHeat,
  absorptance,
  moistureBuffer,
  mass,
  source,
});

export const MATERIALS: readonly Material[] = [
  row('concrete', 'Concrete', 1.75, 2300, 1000, 0.65, 0.37, true, 'between 10456 densities'),
  row('rammed-earth', 'Rammed earth', 1.0, 1950, 900, 0.7, 1.5, true, 'review 2019–2023'),
  row('adobe', 'Adobe', 0.7, 1600, 900, 0.7, 1.5, true, 'review'),
  row('cob', 'Cob', 0.6, 1550, 950, 0.7, 1.5, true, 'review'),
  row('earth-tyres', 'Earth-rammed tyres', 1.0, 1700, 900, 0.7, 1.0, true, 'derived from rammed earth, low'),
  row('brick', 'Clay brick', 0.77, 1800, 1000, 0.68, 0.45, true, 'EN 1745, memory'),
  row('stone', 'Granite', 2.8, 2600, 1000, 0.7, 0.1, true, '10456'),
  row('limestone', 'Limestone', 1.4, 2000, 1000, 0.5, 0.3, true, '10456'),
  row('water', 'Water in drums', 0.6, 1000, 4190, 0.9, 0, true, '10456'),
  row('softwood', 'Softwood', 0.13, 500, 1600, 0.6, 1.15, false, '10456'),
  row('plywood', 'Plywood', 0.13, 500, 1600, 0.6, 0.6, false, '10456'),
  row('plasterboard', 'Gypsum plasterboard', 0.25, 900, 1000, 0.4, 0.6, false, '10456'),
  row('earth-plaster', 'Earth plaster', 0.8, 1700, 1000, 0.5, 1.6, false, 'review'),
  row('lime-plaster', 'Lime plaster', 0.8, 1600, 1000, 0.4, 0.7, false, '10456'),
  row('cellulose', 'Cellulose fibre', 0.04, 50, 1600, 0.5, 0, false, '10456'),
  row('mineral-wool', 'Mineral wool', 0.037, 40, 1030, 0.5, 0, false, '10456'),
  row('straw', 'Straw bale', 0.06, 100, 2000, 0.5, 0, false, 'Lithuanian measurements; memory'),
  row('xps', 'Extruded polystyrene', 0.034, 35, 1450, 0.5, 0, false, '10456'),
  row('tile', 'Ceramic tile', 1.3, 2300, 840, 0.7, 0, false, '10456'),
  row('carpet', 'Carpet', 0.06, 200, 1300, 0.6, 0.3, false, '10456'),
  row('soil', 'Soil, clay or silt', 1.5, 1500, 2000, 0.8, 0, false, '10456, ISO 13370 clay or silt'),
];

/**
 * Look a material up by id.
 *
 * @param id catalogue id
 * @returns the row; throws RangeError for an unknown id, since the schema has already refused those
 */
export function materialById(id: string): Material {
  const found = MATERIALS.find((material) => material.id === id);
  if (!found) throw new RangeError(`material is '${id}'; allowed ${MATERIALS.map((m) => m.id).join(', ')}`);
  return found;
}
