import { describe, expect, test } from 'vitest';
import type { Design } from '../../src/design/design.ts';
import { EXAMPLES } from '../../src/design/examples.ts';
import { parseDesign } from '../../src/design/schema.ts';
import {
  criterionOf,
  criterionOfChoice,
  ownCriterion,
  TOO_HOT_CHOICES,
  tooHotChoice,
  withChoiceKept,
} from '../../src/design/too-hot-criterion.ts';

const MODEST = EXAMPLES.find(({ id }) => id === 'modest')!.design;
const withVents = (vents: Partial<Design['vents']>): Design => ({
  ...MODEST,
  vents: { ...MODEST.vents, ...vents },
});

describe('what counts as too hot', () => {
  test('follows the weather where windows open and somebody or something opens them, else is one temperature', () => {
    for (const habit of ['automatic', 'attentive', 'away', 'forgetful'] as const)
      expect(tooHotChoice(withVents({ habit })), habit).toBe('adaptive-II');
    expect(tooHotChoice(withVents({ habit: 'never' }))).toBe('fixed');
    expect(tooHotChoice(withVents({ houseM2: 0 }))).toBe('fixed');
    expect(criterionOf(withVents({ houseM2: 0 }), 40)).toMatchObject({ aboveC: 26, hours: 262 });
  });

  test('is the choice of the design where it has one, and that stays when the design changes', () => {
    for (const criterion of TOO_HOT_CHOICES) {
      const design = { ...MODEST, comfort: { ...MODEST.comfort, criterion } };
      expect(tooHotChoice(design)).toBe(criterion);
      expect(parseDesign(design)).toEqual({ ok: true, design });
    }
    const kept = withChoiceKept(MODEST);
    expect(tooHotChoice({ ...kept, vents: { ...kept.vents, habit: 'never' } })).toBe('adaptive-II');
  });

  test('allows the share of hours its own source allows, of the hours that source judges', () => {
    const hours = (choice: (typeof TOO_HOT_CHOICES)[number], latitudeDeg = 40) =>
      criterionOfChoice(choice, 26, latitudeDeg).hours;
    // CIBSE TM59 (2017), homes whose windows open: 3 % of the 3672 hours of a bedroom, occupied day and night, from May to
    // September are 110; from memory, high confidence. The southern months, a day or two fewer, are our own rule.
    expect(hours('tm59-open')).toBe(110);
    expect(hours('tm59-open', -35)).toBe(108);
    // CIBSE TM59, homes whose windows stay shut: 3 % of the year's hours, 262.8.
    expect(hours('tm59-3-percent')).toBe(262);
    // CEN/TR 16798-2: 3 % of the year's occupied hours outside a category.
    expect(hours('adaptive-II')).toBe(262);
    // CIBSE Guide A (2006), 1 %; certification practice, 10 %.
    expect(hours('guide-a-living')).toBe(87);
    expect(hours('practice-10-percent')).toBe(876);
  });

  test('is refused with what is allowed when it is none of them', () => {
    const wrong = { ...MODEST, comfort: { ...MODEST.comfort, criterion: 'sweltering' } };
    const result = parseDesign(wrong);
    expect(result.ok).toBe(false);
    if (!result.ok)
      expect(result.faults[0]).toMatchObject({
        path: 'comfort.criterion',
        allowed: expect.stringContaining('adaptive-II'),
      });
    const fast = parseDesign({ ...MODEST, comfort: { ...MODEST.comfort, airSpeedMs: 5 } });
    expect(fast.ok ? '' : fast.faults[0]).toMatchObject({
      path: 'comfort.airSpeedMs',
      allowed: 'a number from 0 to 1.2',
    });
  });

  test('can be set by hand for a question', () => {
    expect(ownCriterion(28, 50)).toMatchObject({ id: 'own', aboveC: 28, hours: 50 });
  });
});
