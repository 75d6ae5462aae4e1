// An outcome as text for a terminal: headline figures by zone, then what the house as a whole does, then the
// findings. Every figure with its unit.

import { hotLabel } from '../findings/hot-words.ts';
import { shortForm } from '../findings/short-form.ts';
import { wordingOf } from '../findings/wording.ts';
import type { Finding, Outcome, RoomOutcome, ZoneOutcome } from '../outcomes/outcome.ts';
import { PLAINLY_K } from '../outcomes/short-hours.ts';
import { TM59_NIGHT } from '../physics/overheating-criteria.ts';
import { fuelCost } from '../quantities/fuel-cost.ts';
import { hasPrices, NO_PRICES, type PriceList } from '../quantities/prices.ts';
import { moneyInWords } from '../quantities/words.ts';
import { type Cell, textTable } from './text-table.ts';

const METRIC = wordingOf('metric');
const lowered = (text: string) => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;
/** Widest line of a finding; terminals of 80 columns hold it. */
const LINE = 78;

/**
 * The table `year` prints.
 *
 * @param all every finding in full, not the short form of those that matter
 * @param sure how far the headline figures may lie from those told, a sentence each
 * @param prices a person's own, for fuel
 */
export function outcomeTable(
  outcome: Outcome,
  all: boolean,
  sure: readonly string[] = [],
  prices: PriceList = NO_PRICES,
): string {
  const { house, sunspace } = outcome.zones;
  // Of a divided house each room, and not the mean of them.
  const rooms = outcome.rooms?.map((room) => ({ head: room.name, zone: inLivedHours(room) }));
  const told: readonly { readonly head: string; readonly zone: ZoneOutcome }[] = [
    ...(rooms ?? [{ head: 'house', zone: house }]),
    ...(sunspace === undefined ? [] : [{ head: 'sunspace', zone: sunspace }]),
  ];
  const zones = told.map(({ zone }) => zone);
  const heads = told.map(({ head }) => head);
  const row = (name: string, of: (zone: ZoneOutcome) => number): Cell[] => [name, ...zones.map(of)];
  const rows: Cell[][] = [
    ['', ...heads],
    row('warmest hour, operative °C', (zone) => zone.maxOperativeC),
    row('coldest hour, operative °C', (zone) => zone.minOperativeC),
    row(`hours ${lowered(hotLabel(house.tooHot, METRIC))}`, (zone) => zone.tooHot.hours),
    row('of them allowed', (zone) => zone.tooHot.limitHours),
    row(`hours below ${house.underheatLimitC} °C`, (zone) => zone.underheatedHours),
    row('mean daily swing K', (zone) => zone.meanDailySwingK),
    row('mean relative humidity %', (zone) => 100 * zone.meanRelativeHumidity),
    row(`hours above ${Math.round(100 * house.humidLimit)} % humidity`, (zone) => zone.humidHours),
    row('moisture released kg/day', (zone) => zone.moistureLoadKgPerDay),
    row('condensed on glass kg/year', (zone) => zone.condensationKg),
    row('ran off glass kg/year', (zone) => zone.drainedKg),
    row('hours with frost on the glass', (zone) => zone.frostHours),
    row('hours of dew in the coldest corner', (zone) => zone.dampSpots[0]?.dewHours ?? 0),
    row('mould index, worst corner, 0 to 6', (zone) => zone.mouldIndexMax),
    row('mould index, dampest spot, 0 to 6', (zone) =>
      Math.max(...zone.dampSpots.map((spot) => spot.mouldIndexMax)),
    ),
    row(
      `hours below ${house.freshAir.ventilationFloorAch} air changes`,
      (zone) => zone.freshAir.belowVentilationHours,
    ),
    row('hours of stale air', (zone) => zone.freshAir.staleAirHours),
    row(`hours above ${TM59_NIGHT.limitC} °C at night`, (zone) => zone.hotNightHours),
    row(`hours that feel like ${house.feltHeat.limitC.toFixed(0)} °C or more`, (zone) => zone.feltHeat.hours),
  ];
  return [
    `${outcome.design}`,
    `${outcome.site.name}`,
    '',
    textTable(rows),
    '',
    ...wholeHouse(outcome, prices),
    ...(sure.length === 0
      ? []
      : ['', 'How sure is that? One thing changed that nobody can know, each a run of its own:']),
    ...sure.flatMap((line) => wrap(line)),
    ...(all ? findingLines(outcome.findings) : shortLines(outcome)),
  ].join('\n');
}

/** Hours of cold as the room is judged by: those it is lived in. */
function inLivedHours(room: RoomOutcome): ZoneOutcome {
  return { ...room, underheatedHours: room.lived.underheatedHours };
}

function wholeHouse(outcome: Outcome, prices: PriceList): string[] {
  const { equatorGlass: glass, mass, heating, fuel, cooling, vents, ventilation, books } = outcome;
  const percent = (share: number) => `${Math.round(100 * share)} %`;
  const kWh = (value: number) => `${Math.round(value)} kWh`;
  const perGlass = mass.kgPerM2Glass === null ? '' : `, ${Math.round(mass.kgPerM2Glass)} kg per m² of glass`;
  return [
    `Glass: ${glass.areaM2.toFixed(1)} m² at ${glass.tiltDeg}°, ${percent(glass.shareOfFloor)} of the floor, ${percent(glass.shareOfWall)} of the equator-facing wall`,
    `Sun on it before any shade ${kWh(glass.incidentKWh)} a year, let in ${kWh(glass.transmittedKWh)}`,
    `Mass inside the insulation: ${mass.volumeM3.toFixed(1)} m³, ${mass.heatCapacityKWhPerK.toFixed(1)} kWh/K${perGlass}`,
    `Back-up heat: ${kWh(heating.energyKWh)} a year, peak ${(heating.peakW / 1000).toFixed(1)} kW`,
    ...(heating.shortHours
      ? [
          `It falls short for ${heating.shortHours} hours in which people are up: a heated room ${PLAINLY_K} K colder than asked for`,
        ]
      : []),
    ...(fuel ? [fuelLine(fuel), ...moneyLines(fuel, prices)] : []),
    ...(cooling.energyKWh > 0 ? [`Cooling: ${kWh(cooling.energyKWh)} a year`] : []),
    ...(ventilation.fansKWh > 0 ? [fanLine(ventilation, kWh)] : []),
    `Vents and doors: moved ${vents.moves} times a year, ${vents.movesPerDayInBusiestMonth.toFixed(1)} a day in the busiest month`,
    `On the busiest day ${vents.movesOnBusiestDay} moves; left standing wrong in ${percent(vents.neglectedShare)} of the year's hours`,
    `Books: heat closes to ${books.heatResidual.toExponential(0)} of the sun taken in, water to ${books.waterResidual.toExponential(0)}`,
  ];
}

/** Fuel by every measure it is bought in. */
function fuelLine({ fuel, fuelKWh, lostKWh, ...by }: NonNullable<Outcome['fuel']>): string {
  const parts = [
    `${Math.round(fuelKWh)} kWh, of which ${Math.round(lostKWh)} lost`,
    ...(by.kg === null ? [] : [`${Math.round(by.kg)} kg`]),
    ...(by.litres === null ? [] : [`${Math.round(by.litres)} litres`]),
    ...(by.therms === null ? [] : [`${Math.round(by.therms)} therms`]),
    ...(by.stackedM3 === null ? [] : [`${by.stackedM3.toFixed(1)} m³ stacked or heaped`]),
    ...(by.cords === null ? [] : [`${by.cords.toFixed(1)} cords`]),
    ...(by.loads === null
      ? []
      : [`${by.loads} loads on ${by.daysWithFire} days, ${by.loadsOnBusiestDay} on the busiest`]),
  ];
  return `Fuel, ${fuel}: ${parts.join('; ')}`;
}

function moneyLines(fuel: NonNullable<Outcome['fuel']>, prices: PriceList): string[] {
  const cost = fuelCost(fuel, prices);
  if (cost !== null) return [`Fuel in money: ${moneyInWords(cost, prices.currency)} a year, by your price`];
  return hasPrices(prices) ? ['Fuel in money: no price for it among yours'] : [];
}

function fanLine(
  { fansKWh, frostHeaterKWh, recoveredKWh }: Outcome['ventilation'],
  kWh: (value: number) => string,
): string {
  const heater = frostHeaterKWh > 0 ? `, heater against frost ${kWh(frostHeaterKWh)}` : '';
  const back = recoveredKWh > 0 ? `; heat given back ${kWh(recoveredKWh)}` : '';
  return `Fans for fresh air: ${kWh(fansKWh)} of electricity a year${heater}${back}`;
}

function shortLines({ findings }: Outcome): string[] {
  const { first, serious, moreFindings, moreCautions } = shortForm(findings);
  const more = moreFindings.length + moreCautions.length;
  return [
    ...findingLines([...first, ...serious]),
    ...(more === 0
      ? []
      : [
          '',
          ...wrap(
            `That is the short form. --all tells these at length, ${moreFindings.length} more findings and ${moreCautions.length} more cautions.`,
          ),
        ]),
  ];
}

function findingLines(findings: readonly Finding[]): string[] {
  return findings.flatMap(({ severity, text }) => ['', ...wrap(`${severity.toUpperCase()}: ${text}`)]);
}

/** Break a text into lines between words. */
export function wrap(text: string, width: number = LINE): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return line === '' ? lines : [...lines, line];
}
