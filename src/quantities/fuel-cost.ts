// Fuel as it is bought, and what a year's costs by a person's own price. An outcome's fuel and a list of prices in; amounts, money
// and words out. No price is built in. Electricity of fans is not in it.

import type { HeatSource } from '../design/heat-source.ts';
import type { FuelOutcome } from '../outcomes/fuel.ts';
import { FUEL_CONTENT } from '../physics/fuel-content.ts';
import type { BoughtBy, Measure } from './figures-in-units.ts';
import { lineCost, type PriceList } from './prices.ts';
import { moneyInWords } from './words.ts';

/** A fuel as a thing with a price. */
export interface FuelItem {
  readonly id: string;
  readonly name: string;
  readonly unit: Measure;
  /** what it is bought by in US units; as its unit is told there where absent */
  readonly us?: BoughtBy;
}

/** By fuel. */
const ITEMS: Readonly<Record<FuelOutcome['fuel'], FuelItem>> = {
  wood: { id: 'fuel wood', name: 'Firewood, a stere being a stacked m³', unit: 'stere' },
  electric: { id: 'fuel electric', name: 'Electricity', unit: 'kWh' },
  gas: { id: 'fuel gas', name: 'Natural gas, by gross heat as billed', unit: 'kWh', us: 'therm' },
  propane: { id: 'fuel propane', name: 'Propane', unit: 'L' },
  oil: { id: 'fuel oil', name: 'Heating oil', unit: 'L' },
  pellets: { id: 'fuel pellets', name: 'Pellets', unit: 'kg' },
};

/** A fuel by the id its price stands under; null for none. */
export function fuelItemById(id: string): FuelItem | null {
  return Object.values(ITEMS).find((item) => item.id === id) ?? null;
}

/** What a design's source burns; nothing where it tells none, or has no heat. */
export function fuelItemsOf({
  source,
  capacityKW,
}: {
  readonly source?: HeatSource;
  readonly capacityKW: number;
}): readonly FuelItem[] {
  if (source === undefined || capacityKW <= 0) return [];
  return [ITEMS[source.kind === 'stove' ? 'wood' : source.fuel]];
}

function bought(fuel: FuelOutcome): { readonly item: FuelItem; readonly amount: number } {
  const amounts = {
    wood: fuel.stackedM3,
    electric: fuel.fuelKWh,
    gas: fuel.fuelKWh * FUEL_CONTENT.gasGrossPerNet,
    propane: fuel.litres,
    oil: fuel.litres,
    pellets: fuel.kg,
  };
  return { item: ITEMS[fuel.fuel], amount: amounts[fuel.fuel] ?? 0 };
}

/** What a year's fuel costs; null without a price for it. */
export function fuelCost(fuel: FuelOutcome, list: PriceList): number | null {
  return lineCost(bought(fuel), list);
}

/** "EUR 320 by your price"; nothing without a price. */
export function fuelCostInWords(fuel: FuelOutcome, list: PriceList): string {
  const cost = fuelCost(fuel, list);
  return cost === null ? '' : `${moneyInWords(cost, list.currency)} by your price`;
}
