// What an error in the weather, the airtightness or the habits does to the answer: each example run as drawn and with
// one thing changed. No check: these are our own figures, printed so that a reader sees how much they lean on guesses.
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { withChoiceKept } from '../../src/design/too-hot-criterion.ts';
import { type ClimateChange, createJobRunner } from '../../src/questions/run-job.ts';
import type { ErrorTable } from '../../src/report/trust.ts';
import { uniformShift } from '../../src/weather/hotter-year.ts';
import { prepareClimate } from '../../src/weather/prepared/prepared-climate.ts';
import type { TypicalYear } from '../../src/weather/typical-year.ts';

interface Error {
  readonly what: string;
  readonly design?: (design: Design) => Design;
  readonly change?: ClimateChange;
}

const leaky = (times: number) => (design: Design) => ({
  ...design,
  air: {
    ...design.air,
    ach50: design.air.ach50 * times,
    sunspaceAch50: design.air.sunspaceAch50 * times,
  },
});

const ERRORS: readonly Error[] = [
  { what: 'all is as drawn' },
  { what: 'every month is 1 °C warmer', change: { shiftK: uniformShift(1) } },
  { what: 'every month is 1 °C colder', change: { shiftK: uniformShift(-1) } },
  { what: 'the house is twice as leaky as hoped', design: leaky(2) },
  { what: 'it is only half as leaky', design: leaky(0.5) },
  {
    what: 'openers work the vents',
    design: (design) => ({ ...design, vents: { ...design.vents, habit: 'automatic' } }),
  },
  {
    what: 'nobody works the vents',
    design: (design) => ({ ...design, vents: { ...design.vents, habit: 'never' } }),
  },
  {
    what: 'people bring in much water by living',
    design: (design) => ({ ...design, people: { ...design.people, living: 'wet' } }),
  },
];

/** The table, of the examples in the climate each stands in. */
export function errorTable(climateOf: (id: string) => TypicalYear): ErrorTable {
  return {
    says: 'The three examples, run as drawn and then with one thing changed at a time. Hours too hot and hours too damp in the rooms, and back-up heat. How such errors act on another design is asked on the page, by "What matters most?".',
    figures: ['hours too hot', 'hours too damp', 'back-up heat, kWh'],
    houses: EXAMPLES.filter(({ design }) => design.rooms === undefined).map(({ design }) => {
      const runJob = createJobRunner(prepareClimate(climateOf(design.climate)));
      return {
        name: design.name,
        rows: ERRORS.map(({ what, design: changed = (same) => same, change = {} }) => {
          const { zones, heating } = runJob({
            id: '',
            label: '',
            // One limit for all, whatever a change does to the windows.
            design: changed(withChoiceKept(design)),
            change,
            at: {},
          }).outcome;
          const { tooHot, humidHours } = zones.house;
          return {
            what,
            values: [tooHot.hours, humidHours, heating.energyKWh].map((value) => Math.round(value)),
          };
        }),
      };
    }),
  };
}
