// Houses as they were measured by their owners and by field studies, against the same kind of house here. No set-up knows all
// of a house: each is made of what is known; what nobody noted is run at both ends of what it may be, or stands at its middle;
// and the year is a typical one of the place, of the nearest bundled climate, or made from the place's normals. What is allowed
// is what such an account is worth. A miss stays in the table as a note with its reason. Not set up: dew at the foot of tyre
// walls on the most sultry days of a real summer (no typical year of the place has them), a house in Alberta and an hourly
// record of Taos that give nothing to check.
import { test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { layerOf } from '../../src/model/layers.ts';
import type { Layer, Model } from '../../src/model/model.ts';
import { always } from '../../src/model/schedule.ts';
import { simulate } from '../../src/network/simulate.ts';
import type { MonthlyNormals } from '../../src/weather/normals.ts';
import { climateById } from '../consistency/promises.ts';
import {
  aboveGround,
  alentejo,
  BRIGHTON,
  bermed,
  brittany,
  FREEVILLE,
  HOCKERTON,
  kressberg,
  SANTA_FE,
  TAOS,
  taosHouse,
  taosHut,
  valencia,
} from './measured-houses.ts';
import {
  at,
  between,
  climateAt,
  corners,
  hoursOf,
  madeClimate,
  mean,
  measured,
  run,
  spell,
  spread,
  WINTER,
  withLayers,
} from './measured-row.ts';

const HOUSES = 'Houses as measured';
/** Of a hill town near Kreßberg; from memory, medium confidence. */
const KRESSBERG_NORMALS: MonthlyNormals = {
  name: 'Kreßberg',
  latitudeDeg: 49.2,
  longitudeDeg: 10.2,
  elevationM: 490,
  meanDailyHighC: [2, 3.8, 8.7, 13.8, 18.2, 21.4, 23.7, 23.4, 18.6, 12.9, 6.4, 2.9],
  meanDailyLowC: [-4, -3.8, -0.8, 2.6, 7.1, 10.4, 12.2, 11.8, 8.3, 4.5, 0.3, -2.7],
  humidityPercent: [87, 83, 77, 71, 71, 71, 70, 73, 79, 84, 88, 89],
  dailyGlobalKWh: [0.9, 1.7, 2.9, 4.3, 5.1, 5.5, 5.5, 4.7, 3.3, 1.9, 1, 0.7],
  windSpeed: [3.2, 3.1, 3.1, 2.9, 2.6, 2.5, 2.4, 2.3, 2.4, 2.6, 2.8, 3.1],
};
const JANUARY = 0;
const FEBRUARY = 1;
const MARCH = 2;
const JUNE = 5;
const AUGUST = 7;
const SUMMER = [5, 6, 7, 8];
const NOVEMBER = 10;

test('a rammed-tyre house without a heater stays at 14 to 16 °C through a German winter', () => {
  const climate = madeClimate(KRESSBERG_NORMALS);
  // The great unknown, run at three: what people, kitchen and showers give off.
  const coldest = [300, 800, 1500].map((watt) => run(kressberg(watt), climate).outcome.zones.house.minAirC);
  measured({
    source: `${HOUSES}, rammed tyres, winter 2016–17 (accounts of builder and engineers)`,
    where:
      'Kreßberg, 170 m², planted sunspace, no heater; year made from monthly normals. Open: 300 to 1500 W of use',
    quantity: 'coldest air of the rooms',
    range: [14, 16],
    allowed: 2,
    ours: coldest,
    unit: '°C',
  });
});

test('a planted sunspace that is shut off stays above frost, and an oven holds the rooms', () => {
  const { outcome } = run(FREEVILLE, climateById('burlington'));
  const where = 'Freeville NY, wood oven, sunspace shut off; nearest bundled climate, Burlington';
  measured({
    source: `${HOUSES}, rammed tyres, winters 2013–16 (owners’ log)`,
    where,
    quantity: 'coldest air of the sunspace',
    range: [4, 9],
    allowed: 2,
    ours: outcome.zones.sunspace!.minAirC,
    unit: '°C',
  });
  // Not told, and run at both ends: earth alone behind the tyres and under the floor, or insulated; oven fed for 18 °C by day
  // and 13 by night, or for 20 and 17.
  const heats = corners({ insulated: [0, 1], day: [18, 20] }).map(({ insulated, day }) => {
    const house: Design = {
      ...FREEVILLE,
      ...(insulated === 0 && {
        floor: { ...FREEVILLE.floor, resistance: 0, edgeResistance: 0 },
        envelope: { ...FREEVILLE.envelope, wallResistance: 0.5 },
      }),
      heating: { ...FREEVILLE.heating, dayC: day, nightC: day === 18 ? 13 : 17 },
    };
    return run(house, climateById('burlington')).outcome.heating.energyKWh / 1000;
  });
  measured({
    source: `${HOUSES}, rammed tyres, winters 2013–16 (owners’ log)`,
    where: `${where}. Open: insulation, what the oven is fed for`,
    quantity: 'heat of the oven to the rooms, a year',
    range: [5, 8],
    allowed: 0,
    ours: heats,
    unit: 'MWh',
    missed: { by: 1, why: 'Its size is not told, and some of the two cords of wood cooked and heated water' },
  });
});

test('an earth-sheltered terrace with heat recovery needs no heating', () => {
  const { outcome } = run(HOCKERTON, climateById('belfast'));
  const where = 'Hockerton, conservatory, triple glass, family of four; nearest bundled climate, Belfast';
  const row = {
    source: `${HOUSES}, earth-sheltered terrace, since 1998 (press 2024)`,
    where,
    allowed: 1.5,
    unit: '°C',
  };
  const { minAirC, maxAirC } = outcome.zones.house;
  measured({ ...row, quantity: 'coldest air of the rooms', range: [18, 23], ours: minAirC });
  measured({ ...row, quantity: 'warmest air of the rooms', range: [18, 23], ours: maxAirC });
});

test('an empty one without insulation under its floor is cold and damp in winter', () => {
  const { airC, rh } = run(BRIGHTON, climateById('belfast'));
  const hours = hoursOf(WINTER);
  const where = 'Brighton, visitor building, bare floor, empty; nearest bundled climate, Belfast';
  const source = `${HOUSES}, rammed chalk in tyres, since 2004 (Renewable Energy 34, 2009)`;
  measured({
    source,
    where,
    quantity: 'share of winter under 16 °C',
    range: [0.5, 1],
    told: 'over 0.5',
    allowed: 0,
    ours: hours.filter((hour) => airC[hour]! < 16).length / hours.length,
    unit: '',
  });
  measured({
    source,
    where,
    quantity: 'mean humidity of winter',
    range: [0.7, 1],
    told: 'over 0.7',
    allowed: 0.08,
    ours: mean(hours.map((hour) => rh[hour]!)),
    unit: '',
    missed: { by: 0.3, why: 'Water that rises through floor and walls is not in the model' },
  });
});

test('a thick rammed-earth house with few openings evens out a summer spell', async () => {
  const climate = await climateAt('Alentejo', 38, -7.9, 200);
  const hours = spell(climate.year.dryBulbC, 14);
  const outdoors = at(climate.year.dryBulbC, hours);
  // Not told, and run at both ends: windows shut or opened by hand, roof of 0.5 to 2 m²K/W.
  const all = corners({ opened: [0, 1], roof: [0.5, 2] }).map(({ opened, roof }) =>
    at(run(alentejo(opened === 1 ? 'attentive' : 'never', roof), climate).airC, hours),
  );
  const row = {
    source: `${HOUSES}, rammed earth in summer (Buildings 5, 2015)`,
    where:
      'Alentejo, thick earth walls, few openings, hottest fortnight; year made from normals of the place. Open: who opens windows, the roof',
  };
  measured({
    ...row,
    quantity: 'range of the rooms over that of outdoors',
    range: [0.15, 0.15],
    allowed: 0.06,
    ours: all.map((airC) => spread(airC) / spread(outdoors)),
    unit: '',
  });
  measured({
    ...row,
    quantity: 'mean of the rooms less that of outdoors',
    range: [0, 0],
    allowed: 1,
    ours: all.map((airC) => mean(airC) - mean(outdoors)),
    unit: 'K',
  });
});

test('an adobe house with direct gain stands as its owners found it, in sun and in summer', () => {
  const climate = climateById('santa-fe');
  const { airC } = run(SANTA_FE, climate);
  const sunny = at(airC, spell(climate.year.globalHorizontal, 7, { months: [FEBRUARY] }));
  const august = at(airC, hoursOf([AUGUST]));
  const row = { source: `${HOUSES}, adobe and direct gain, 2011 (owners’ log)`, allowed: 1.5, unit: '°C' };
  const where = 'Santa Fe county, boiler at 17.2 °C; bundled climate of Santa Fe';
  measured({
    ...row,
    where: `${where}, sunniest week of February`,
    quantity: 'coldest air',
    range: [18, 25],
    ours: Math.min(...sunny),
  });
  measured({
    ...row,
    where: `${where}, sunniest week of February`,
    quantity: 'warmest air',
    range: [18, 25],
    ours: Math.max(...sunny),
  });
  measured({
    ...row,
    where: `${where}, August`,
    quantity: 'coldest air',
    range: [20, 25.6],
    ours: Math.min(...august),
    missed: {
      by: 2,
      why: 'Who opens windows at night is not told; ours cool the rooms further before a hot day',
    },
  });
  measured({
    ...row,
    where: `${where}, August`,
    quantity: 'warmest air',
    range: [20, 25.6],
    ours: Math.max(...august),
  });
});

test('leaning glass without shade overheats in June', () => {
  const { airC } = run(TAOS, climateById('santa-fe'));
  measured({
    source: `${HOUSES}, rammed tyres, June 1995 (Renewable Energy 8, 1996)`,
    where: 'Taos, sloped glass without shade; nearest bundled climate, Santa Fe',
    quantity: 'warmest air of the rooms in June',
    range: [28, 45],
    told: 'over 28 °C',
    allowed: 0,
    ours: Math.max(...hoursOf([JUNE]).map((hour) => airC[hour]!)),
    unit: '°C',
  });
});

test('by the leaning glass of a tyre hut it is warmer by day than at its back', () => {
  const climate = climateById('santa-fe');
  const days = between(spell(climate.year.globalHorizontal, 7, { months: [MARCH] }), 10, 16);
  // Not told, and run at both ends: 40 to 70 m² of floor, 14 to 24 m² of glass.
  const ours = corners({ floor: [40, 70], glass: [14, 24] }).map(({ floor, glass }) => {
    const { airC, sunspaceC } = run(taosHut(floor, glass), climate);
    return mean(at(sunspaceC!, days)) - mean(at(airC, days));
  });
  measured({
    source: `${HOUSES}, a do-it-yourself solar site, March 2006`,
    where:
      'Taos, a rammed-tyre hut behind sloped glass, sunniest week of March, by day; nearest bundled climate, Santa Fe. Open: floor, glass',
    quantity: 'air by the glass warmer than at the back, by',
    range: [5, 5],
    allowed: 3,
    ours,
    unit: 'K',
    missed: {
      by: 6,
      why: 'Ours takes an open front and the rooms behind it as two well-mixed airs with a hole between them as large as the wall, which makes them nearly one',
    },
  });
});

test('an outer sunspace without shades is near outdoors before dawn', () => {
  const climate = climateById('santa-fe');
  const dawns = between(hoursOf([NOVEMBER]), 5, 6);
  // Not told, and run at both ends: 10 to 25 m² of glass to the rooms, 10 to 30 air changes at 50 Pa.
  const ours = corners({ glass: [10, 25], leaks: [10, 30] }).map(({ glass, leaks }) => {
    const { sunspaceC } = run(taosHouse(glass, leaks), climate);
    return mean(at(sunspaceC!, dawns)) - mean(at(climate.year.dryBulbC, dawns));
  });
  measured({
    source: `${HOUSES}, a resident’s account, November 2022`,
    where:
      'Taos, rammed tyres behind an outer sunspace without shades, November; nearest bundled climate, Santa Fe. Open: glass between them, draughts',
    quantity: 'sunspace over outdoors before dawn',
    range: [3, 8],
    allowed: 0,
    ours,
    unit: 'K',
    missed: {
      by: 8,
      why: 'What stands between it and the rooms, and how heavy it is, was not told; ours keeps the sun of the day in a slab and an adobe wall',
    },
  });
});

test('cloudy days of January stand at 16 °C in a tyre house without a heater told of', async () => {
  const climate = await climateAt('Hills of Valencia', 39.5, -1, 800);
  const cloudy = spell(climate.year.globalHorizontal, 3, { months: [JANUARY], least: true });
  // Not told, and run at both ends: 26 to 40 m² of glass, earth alone or 3 m²K/W behind the tyres, 200 to 500 W of use.
  const ours = corners({ glass: [26, 40], wall: [0.5, 3], watt: [200, 500] }).map(({ glass, wall, watt }) =>
    mean(at(run(valencia(glass, wall, watt), climate).airC, cloudy)),
  );
  measured({
    source: `${HOUSES}, an owners’ log, January 2009`,
    where:
      'hills of Valencia, rammed tyres, planters at the glass, the three cloudiest days of January; year made from normals of the place. Open: glass, insulation, use',
    quantity: 'mean air of the rooms',
    range: [16, 16],
    allowed: 2,
    ours,
    unit: '°C',
    missed: {
      by: 2.5,
      why: 'Nobody has measured the air change of such houses; ours is as tight as a careful one, and no window stands open',
    },
  });
});

test('a tyre house with stoves keeps nearly one temperature over the year', async () => {
  const climate = await climateAt('Brittany', 48, -3, 100);
  const months = Array.from({ length: 12 }, (_, month) => hoursOf([month]));
  // Not told, and run at both ends: 16 to 28 m² of glass, earth alone or 3 m²K/W behind the tyres.
  const ours = corners({ glass: [16, 28], wall: [0.5, 3] }).map(({ glass, wall }) => {
    const { airC } = run(brittany(glass, wall), climate);
    return spread(months.map((hours) => mean(at(airC, hours))));
  });
  measured({
    source: `${HOUSES}, press of 2010 on the owners’ book`,
    where:
      'Brittany, rammed tyres without an outer sunspace, wood stoves; year made from normals of the place. Open: glass, insulation',
    quantity: 'warmest month over the coldest',
    range: [0, 5],
    told: 'under 5 K',
    allowed: 0,
    ours,
    unit: 'K',
  });
});

/** Cooling that holds a house at 25 °C from June to September [W], with more layers on its roof or none. */
function coolingOf(design: Design, onRoof: readonly Layer[]): number {
  const climate = climateById('greensboro');
  const plain = modelOf(design, climate.year.site, climate.ground);
  const roofed = withLayers(plain, 'roof', (layers) => [...onRoof, ...layers]);
  const cooled: Model = {
    ...roofed,
    zones: roofed.zones.map((zone) => ({
      ...zone,
      thermostat: { heatC: always(20), coolC: always(25), heatCapacityW: 50_000, coolCapacityW: 50_000 },
    })),
  };
  const { coolingW } = simulate(cooled, climate).zones[0]!;
  return mean(at(coolingW, hoursOf(SUMMER)).map(Math.abs));
}

test('earth on its roof and against its walls spares a building part of its cooling', () => {
  // Not told, and run at both ends: 0.3 to 0.6 m of earth on the roof, 5 to 9 W/m² of use.
  const ours = corners({ earth: [0.3, 0.6], watt: [1800, 3300] }).map(({ earth, watt }) => {
    const above = aboveGround(watt);
    return 1 - coolingOf(bermed(above), [layerOf('soil', earth)]) / coolingOf(above, []);
  });
  measured({
    source: `${HOUSES}, a national laboratory’s report, two summers (10.2172/6795979)`,
    where:
      'Oak Ridge, a building of 372 m² with earth on its roof and against its walls, beside a good one above ground; nearest bundled climate, Greensboro. Open: depth of the earth, use',
    quantity: 'cooling spared, share',
    range: [0.3, 0.3],
    allowed: 0.12,
    ours,
    unit: '',
    missed: {
      by: 0.4,
      why: 'Earth on a roof is warmed by the sun here and never cooled by rain that dries; and of the building beside it no more is told than that it is a good one',
    },
  });
});
