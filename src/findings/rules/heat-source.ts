// What gives the back-up heat: what it asks for in a year, a stove that overheats the rooms or that nobody feeds, wet wood, a
// floor asked for too much; and the dangers of fire in a house. Sources on each rule; codes, makers and fitters come first.

import { type HeatSource, STOVE_NUMBERS, type StoveSource } from '../../design/heat-source.ts';
import { roomPlanOf } from '../../design/room-plan.ts';
import { modelOf } from '../../model/from-design.ts';
import { heatedAsAir } from '../../model/heat-source.ts';
import { FLOOR_LIMIT_C, floorOutput, WALL_LIMIT_C, wallOutput } from '../../physics/floor-output.ts';
import { dryHeatOf, woodById, woodHeat } from '../../physics/wood-fuel.ts';
import { HOURS } from '../../weather/typical-year.ts';
import type { Context } from '../context.ts';
import { fuelWords } from '../fuel-words.ts';
import { oncePer } from '../once-per.ts';
import { caution, finding, type Rule } from '../rule.ts';
import { hours, percent } from '../wording.ts';

/** A stove that warms rooms above this for so long is noticed [°C, h]. House rule. */
const WARM_ENOUGH_C = 25;
const NOTICED_HOURS = 40;
/** A stove that gives less is out of mind [W]. House rule. */
const LITTLE_W = 200;
/** Water above which wood is wet, and of well stacked wood. Common practice, no source. */
const WET_MOISTURE = 0.22;
const DRY_MOISTURE = 0.18;
/** Houses tighter than this need air brought in for any fire [air changes an hour at 50 Pa]. House rule. */
const TIGHT_ACH50 = 5;
/** A fan must not pull a stove's room further below outdoors [Pa]: German rule, memory, high confidence. */
const FAN_PA = 4;
/** Bare metal burns skin within a minute from this on [°C]: ISO 13732-1, memory, medium confidence. */
const BURNS_C = 51;

/** Water that a log boiler's store holds for each kilowatt it takes [L/kW]: German emission rule, memory, medium confidence. */
const STORE_L_PER_KW = 55;

/** The stove of a design; null for none. */
export function stoveOf({ design }: Pick<Context, 'design'>): StoveSource | null {
  const { source, capacityKW } = design.heating;
  return source?.kind === 'stove' && capacityKW > 0 ? source : null;
}

/** Whether the back-up heat is or may be a flame. */
export function mayBurn(source: HeatSource | undefined): boolean {
  return source === undefined || source.kind === 'stove' || source.fuel !== 'electric';
}

/** Hours in which the stove gives heat to rooms that are warm enough. */
const overheatedByStove = oncePer(({ year, worst }: Context): number => {
  const { operativeC } = worst('hot').year;
  const [stove] = year.stoves ?? [];
  if (stove === undefined) return 0;
  return stove.roomW.filter((watt, hour) => watt > LITTLE_W && operativeC[hour]! > WARM_ENOUGH_C).length;
});

/** The coldest of weekends, of noons after them, and of corners in them [°C]. */
const weekendLow = oncePer(({ climate, worst }: Context) => {
  const { operativeC, cornerC } = worst('cold').year;
  const { weekend } = climate.calendar;
  const low = {
    lowestC: Number.POSITIVE_INFINITY,
    mondayC: Number.POSITIVE_INFINITY,
    cornerC: Number.POSITIVE_INFINITY,
  };
  for (let hour = 0; hour < HOURS; hour++) {
    if (weekend[hour] === 1) {
      low.lowestC = Math.min(low.lowestC, operativeC[hour]!);
      low.cornerC = Math.min(low.cornerC, cornerC[hour]!);
    } else if (hour % 24 === 12 && weekend[(hour + HOURS - 24) % HOURS] === 1)
      low.mondayC = Math.min(low.mondayC, operativeC[hour]!);
  }
  return low;
});

export const HEAT_SOURCE_RULES: readonly Rule[] = [
  finding({
    id: 'fuel-of-a-year',
    severity: 'note',
    applies: ({ outcome }) => (outcome.fuel?.fuelKWh ?? 0) >= 1,
    figures: ({ outcome, design, words }) => ({
      asked: fuelWords(outcome.fuel!, design, words),
      fuelKWh: outcome.fuel!.fuelKWh,
      lostKWh: outcome.fuel!.lostKWh,
      busiest: outcome.fuel!.loadsOnBusiestDay ?? 0,
    }),
    says: (f, { words }) =>
      `The back-up heat takes ${f.asked} a year.` +
      (f.lostKWh >= 1
        ? ` Of the ${words.energy(f.fuelKWh)} in it ${words.energy(f.lostKWh)} are lost on the way.`
        : '') +
      (f.busiest > 0
        ? ` On the busiest day the stove is fed ${f.busiest === 1 ? 'once' : `${f.busiest} times`}.`
        : ''),
  }),
  finding({
    id: 'stove-overheats',
    severity: (context) => (overheatedByStove(context) > 5 * NOTICED_HOURS ? 'warning' : 'note'),
    applies: (context) => overheatedByStove(context) > NOTICED_HOURS,
    figures: (context) => ({
      hours: overheatedByStove(context),
      limitC: WARM_ENOUGH_C,
      masonry: stoveOf(context)?.stove === 'masonry' ? 'yes' : 'no',
    }),
    says: (f, { words }) =>
      `For ${hours(f.hours)} a year the stove heats rooms that are above ${words.temperature(f.limitC)} already. ` +
      (f.masonry === 'yes'
        ? 'A masonry heater gives its heat whether the sun comes out or not. A smaller one, or one fire in the evening after a grey day, is kinder.'
        : 'Lay smaller fires, and none on a morning that promises sun. A smaller stove is easier to keep low.'),
  }),
  finding({
    id: 'stove-unfed',
    severity: 'warning',
    applies: (context) =>
      stoveOf(context) !== null && context.outcome.fuel?.loads === 0 && context.house.underheatedHours > 0,
    figures: ({ house, design }) => ({
      hours: house.underheatedHours,
      limitC: house.underheatLimitC,
      people: design.people.count,
    }),
    says: (f, { words }) =>
      `Nobody feeds the stove in this design, and the rooms are below ${words.temperature(f.limitC)} for ${hours(f.hours)} a year. ` +
      (f.people === 0
        ? 'No one lives there to light it.'
        : 'No one is at home and awake in the hours in which it may be lit.'),
  }),
  finding({
    id: 'weekend-away',
    severity: (context) => (weekendLow(context).cornerC < 0 ? 'warning' : 'note'),
    applies: ({ design }) => design.people.awayWeekends === true && design.heating.capacityKW > 0,
    figures: (context) => ({
      ...weekendLow(context),
      heat: stoveOf(context) ? 'stove' : 'thermostat',
      nightC: context.design.heating.nightC,
    }),
    says: (f, { words }) =>
      `Nobody is there at weekends, and ${f.heat === 'stove' ? 'no fire burns' : `the heat is left at ${words.temperature(f.nightC)}`}. ` +
      `The rooms then fall to ${words.temperature(f.lowestC, 1)} at the coldest. On the coldest Monday they are at ${words.temperature(f.mondayC, 1)} by noon.` +
      (f.cornerC < 0 ? ' The coldest corner freezes: let the water out of pipes before you leave.' : ''),
  }),
  finding({
    id: 'wet-wood',
    severity: 'warning',
    applies: (context) => (stoveOf(context)?.moisture ?? 0) > WET_MOISTURE,
    figures: (context) => {
      const { wood, moisture } = stoveOf(context)!;
      const dry = dryHeatOf(woodById(wood));
      return {
        moisture,
        dryMoisture: DRY_MOISTURE,
        less: 1 - woodHeat(dry, moisture) / woodHeat(dry, DRY_MOISTURE),
        source: 'heat by water: standard form; soot and smoke: common practice, no source',
      };
    },
    says: (f) =>
      `The wood is wet: ${percent(f.moisture)} of its weight is water, and each log gives ${percent(f.less)} less heat by weight than one at ${percent(f.dryMoisture)}. That much is counted here. What is not counted is that wet wood also burns cold and smoky, and wastes more up the flue; its tar can set the flue on fire. Split it and stack it under a roof for two summers.`,
  }),
  finding({
    id: 'heated-face-missing',
    severity: 'warning',
    applies: (context) => airInPlace(context) !== null,
    figures: (context) => ({
      where: airInPlace(context)!,
      kind: context.design.heating.source!.kind,
    }),
    says: (f) =>
      f.kind === 'stove'
        ? `The back boiler has no floor to warm: ${f.where} has no heated room with a slab on the ground. All the stove’s heat goes to its room.`
        : f.kind === 'wall'
          ? `A heated wall is drawn, and there is no extra mass to lay its pipes in, in ${f.where}. There the heat goes to the air, as from a plain heater. Add extra mass, or heat another way.`
          : `A heated floor is drawn, and there is no slab on the ground to lay its pipes in, in ${f.where}. There the heat goes to the air, as from a plain heater.`,
  }),
  finding({
    id: 'floor-asked-too-much',
    severity: 'note',
    applies: (context) => {
      const faces = heatedFaces(context);
      return faces !== null && 1000 * context.design.heating.capacityKW > faces.mostW;
    },
    figures: (context) => ({
      capacityW: 1000 * context.design.heating.capacityKW,
      dayC: context.design.heating.dayC,
      ...heatedFaces(context)!,
    }),
    says: (f, { words }) =>
      `A ${f.what} no warmer than ${words.temperature(f.limitC)}, the most that ${f.what === 'floor' ? 'feet like' : 'is usual'}, gives ${words.power(f.mostW)} at ${words.temperature(f.dayC)} in the rooms. The heater could give it ${words.power(f.capacityW)}: more than it can hand on.`,
  }),
];

/** What heated faces give at most: the ground floor, or the extra mass of heated rooms; null where none is heated. */
function heatedFaces({ design, geometry }: Context) {
  const { source, dayC } = design.heating;
  const overK = (limitC: number, most: number) => Math.min(Math.max(0, limitC - dayC), most);
  if (source?.kind === 'floor' && FLOOR_LIMIT_C > dayC)
    return {
      what: 'floor',
      mostW: geometry.groundFloorM2 * floorOutput(overK(FLOOR_LIMIT_C, 20)),
      limitC: FLOOR_LIMIT_C,
      source: 'EN 1264 (from memory, confirmed)',
    };
  if (source?.kind === 'wall' && design.mass.areaM2 > 0)
    return {
      what: 'wall',
      mostW: design.mass.areaM2 * wallOutput(overK(WALL_LIMIT_C, 40)),
      limitC: WALL_LIMIT_C,
      source: 'EN 1264 (limit read second-hand, output from memory)',
    };
  return null;
}

/** Rooms whose heat goes to the air though a heated floor or wall is drawn, in words; null for none. */
const airInPlace = oncePer(({ design, climate }: Context): string | null => {
  const { source } = design.heating;
  if (source === undefined || source.kind === 'heater') return null;
  if (source.kind === 'stove' && !source.floorShare) return null;
  const zones = heatedAsAir(design, modelOf(design, climate.year.site, climate.ground));
  if (zones.length === 0) return null;
  const names = (roomPlanOf(design)?.rooms ?? []).flatMap(({ id, room }) =>
    zones.includes(id) ? [`“${room.name}”`] : [],
  );
  return names.length === 0 ? 'the house' : names.join(', ');
});

export const HEAT_SOURCE_CAUTIONS: readonly Rule[] = [
  caution({
    id: 'caution-stove-fan',
    severity: 'warning',
    applies: (context) => {
      const { design } = context;
      const hasFan = design.vents.extractAch > 0 || design.vents.nightPurgeAch > 0;
      return stoveOf(context)?.air === 'room' && (hasFan || design.air.ach50 <= TIGHT_ACH50);
    },
    figures: ({ design }) => ({
      ach50: design.air.ach50,
      pascals: FAN_PA,
      source: 'German fire rules (from memory, high confidence); local codes decide',
    }),
    says: (f) =>
      `The stove burns the room's air. A fan that blows air out, a kitchen hood too, can draw its smoke and carbon monoxide back into the house. No fan may pull the room more than ${f.pascals} pascals below outdoors: bring the fire its own air by a pipe, or fit a switch that stops the fan. Have a licensed fitter test it with all fans on.`,
  }),
  caution({
    id: 'caution-stove-clearance',
    severity: 'warning',
    applies: (context) => stoveOf(context) !== null,
    figures: () => ({ source: 'usual building practice; the maker’s sheet and local codes decide' }),
    says: () =>
      "Keep the stove and its pipe as far from wood, curtains and straw as the maker's sheet and your code ask, on a hearth that cannot burn. Where the pipe goes through a wall or roof it needs a tested sleeve. A masonry heater needs a footing of its own. Have a licensed fitter set it up, and tell your insurer.",
  }),
  caution({
    id: 'caution-stove-bedroom',
    severity: 'warning',
    applies: (context) => {
      const plan = roomPlanOf(context.design);
      return stoveOf(context) !== null && plan?.rooms[plan.stove]?.room.use === 'bedroom';
    },
    figures: () => ({
      source:
        'US model codes bar many fires from bedrooms (from memory, medium confidence); local codes decide',
    }),
    says: () =>
      'This stove stands where people sleep. Carbon monoxide has no smell, and who sleeps does not wake from it. Many codes allow no fire in a bedroom, or only one that is closed and has its own air by a pipe. Ask your building office first, and fit a carbon monoxide alarm in the room.',
  }),
  caution({
    id: 'caution-hot-stove',
    severity: 'warning',
    applies: (context) => stoveOf(context) !== null,
    figures: (context) => ({
      faceC: STOVE_NUMBERS[stoveOf(context)!.stove].faceC,
      burnsC: BURNS_C,
      source: 'ISO 13732-1 (from memory, medium confidence); faces: trade figures',
    }),
    says: (f, { words }) =>
      `The face of such a stove is at about ${words.temperature(f.faceC)}. Bare metal at ${words.temperature(f.burnsC)} burns skin within a minute, and glass and iron far sooner. Put a fixed guard round it where small children, or people who may fall, can reach it.`,
  }),
  caution({
    id: 'caution-back-boiler',
    severity: 'warning',
    applies: (context) => (stoveOf(context)?.floorShare ?? 0) > 0,
    figures: (context) => ({
      storeL: stoveOf(context)!.storeL ?? 0,
      wantedL: STORE_L_PER_KW * context.design.heating.capacityKW * stoveOf(context)!.floorShare!,
      source:
        'usual building practice; size: German emission rule (from memory, medium confidence); local codes and the maker’s sheet decide',
    }),
    says: (f, { words }) =>
      'A boiler in a stove can boil, burst or scald when its pump stops, as in a power cut: a fire cannot be switched off. It needs a safety valve, and a vent or a cooling loop that works with no power. Have a licensed fitter plan and test it, and light no fire while the power is out.' +
      (f.storeL === 0
        ? ` No water store is drawn: the slab then takes the heat as it comes, whether the rooms want it or not. Rules for log boilers ask for a store; ${words.water(f.wantedL)} would suit this one.`
        : f.storeL < f.wantedL
          ? ` Rules for log boilers ask for a store of ${words.water(f.wantedL)} for this one; ${words.water(f.storeL)} are drawn.`
          : ''),
  }),
  caution({
    id: 'caution-wood-stack',
    severity: 'note',
    applies: (context) => stoveOf(context) !== null,
    figures: () => ({ source: 'common practice, no source; local codes decide' }),
    says: () =>
      'Stack the wood outdoors under a roof, off the ground and clear of the walls, and bring in a day or two of it. A stack against the house feeds a wild fire and brings insects; a stack in the rooms gives off water and mould. Put ash in a metal bin with a lid, outdoors: it glows for days.',
  }),
  caution({
    id: 'caution-chimney',
    severity: 'note',
    applies: (context) => stoveOf(context) !== null,
    figures: () => ({ source: 'common practice, no source; local codes decide' }),
    says: () =>
      'A flue must end well above the roof, above the deepest snow, and clear of the ridge, and snow that slides must not shear it off. Brush snow and ice from its cap before you light a fire. Have it swept at least once a year, and know what to do if it burns.',
  }),
];
