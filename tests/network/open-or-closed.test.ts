// The same glass, plants and climate with the sunspace open to the rooms, closed off by a wall whose door obeys its
// rule, and closed off with the door always shut: what it does to damp, mould and back-up heat in a cool climate.
// Direction only: common practice, no source.
import { expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { modelOf } from '../../src/model/from-design.ts';
import { simulate } from '../../src/network/simulate.ts';
import { summarise } from '../../src/outcomes/summarise.ts';
import { bundledClimate, bundledYear } from '../weather/bundled-climates.ts';

const year = bundledYear('burlington');
const climate = bundledClimate('burlington');
const planted = EXAMPLES.find(({ id }) => id === 'closed')!.design;
const base: Design = { ...planted, plants: { bedM2: 12, leafAreaIndex: 3, soil: 'bare' } };

function outcomeOf(sunspace: Partial<Design['sunspace']>) {
  const design = { ...base, sunspace: { ...base.sunspace, ...sunspace } };
  const model = modelOf(design, year.site, climate.ground);
  return summarise(design, model, climate, simulate(model, climate)).zones.house;
}

const open = outcomeOf({ join: 'open', doorRule: 'open' });
const byNeed = outcomeOf({ join: 'closed', doorRule: 'by-need' });
const shut = outcomeOf({ join: 'closed', doorRule: 'shut' });

test('in a cool climate a planted front open to the rooms is clearly damper than the same front closed off', () => {
  expect(open.humidHours).toBeGreaterThan(byNeed.humidHours + 500);
  expect(open.humidHours).toBeGreaterThan(shut.humidHours + 500);
  expect(open.mouldIndexMax).toBeGreaterThan(shut.mouldIndexMax);
  expect(open.mouldIndexMax).toBeGreaterThan(byNeed.mouldIndexMax);
});

test('a door that obeys its rule lets little more damp in than one always shut', () => {
  expect(byNeed.humidHours).toBeLessThan((open.humidHours + shut.humidHours) / 2);
});

test('venting trades humidity for heat', () => {
  const design = (habit: Design['vents']['habit']) => {
    const of = {
      ...base,
      sunspace: { ...base.sunspace, join: 'open' as const },
      vents: { ...base.vents, habit },
    };
    const model = modelOf(of, year.site, climate.ground);
    return summarise(of, model, climate, simulate(model, climate));
  };
  const [vented, stuffy] = [design('attentive'), design('never')];
  expect(vented.zones.house.humidHours).toBeLessThan(stuffy.zones.house.humidHours);
  expect(vented.heating.energyKWh).toBeGreaterThan(stuffy.heating.energyKWh);
});
