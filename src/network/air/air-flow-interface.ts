// What a run asks of the air that flows: the door between air-flow.ts and whoever steps, sums or records.

import type { Model } from '../../model/model.ts';
import type { Moment } from '../hour/clock.ts';
import type { DayPart } from '../hour/day-part.ts';
import type { OpeningState } from '../people/occupant-control.ts';

export interface AirFlow {
  /** take a model's openings in, all shut, and the density of the air of its zones [kg/m³] */
  load(model: Model, roomDensity: number, stepS: number): void;
  /** zone: mass that comes in from outdoors; with no stack as much goes out [kg/s] */
  readonly outdoors: Float64Array;
  /** zone: of it so much gives all its heat back to what comes in [kg/s] */
  readonly recovered: Float64Array;
  /** zone: of it so much leaves with no heat of the zone's [kg/s] */
  readonly spared: Float64Array;
  /** zone: heat of the hour from supply fans and heaters against frost [W]; of it what leaves with the old air [W] */
  readonly givenW: Float64Array;
  readonly lostW: Float64Array;
  /** zone · zones + zone it comes from; symmetric but for what a stack carries [kg/s] */
  readonly between: Float64Array;
  /** opening: volume flow each way [m³/s]; how far open what moves is in the mean of the step, 0…1 */
  readonly volume: Float64Array;
  readonly share: Float64Array;
  openingStates(): readonly OpeningState[];
  /** steps of another length from now on [s] */
  setStep(stepS: number): void;
  /** from now on until endLongSteps(), whoever moves a vent does so as an opener does, less far if out or forgetful; after it all vents are shut */
  beginLongSteps(): void;
  endLongSteps(): void;
  /** before a long step, after beginHour() at the middle of its day part */
  beginLongStep(dayPart: DayPart, dryBulbC: Float64Array): void;
  /** before the steps of an hour */
  beginHour(moment: Moment): void;
  /** whether anything that moves is open, or may be within the hour that has begun */
  mayMove(): boolean;
  /** before each step, from the temperatures it starts at; people at home look up at quarter hours */
  beginStep(moment: Moment, isQuarter: boolean, secondsGone: number): void;
  /** flows for the trial temperatures in zoneC; false when they depend on none, with all that moves shut */
  renew(): boolean;
  /** the last renewal changed a flow */
  isNew(): boolean;
  /** whether an opener, shut as everything is, would open at these temperatures [°C] */
  wouldOpen(zoneC: Float64Array): boolean;
  /** fans, and motors where they are, stand still from the next hour on, or run again */
  cutPower(isOut: boolean): void;
  /** moves start to count */
  startCounting(): void;
}
