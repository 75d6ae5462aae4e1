import { describe, expect, it, test } from 'vitest';
import { contextOf, type Run } from '../../src/findings/context.ts';
import { findingsOf } from '../../src/findings/findings.ts';
import type { Rule } from '../../src/findings/rule.ts';
import { RULES } from '../../src/findings/rules.ts';
import { isCaution } from '../../src/findings/short-form.ts';
import { madeRun } from './made-run.ts';
import { ALWAYS, RULE_CASES } from './rule-cases.ts';

const speakingRuns = new Map<string, Run>();

describe('every rule', () => {
  it('has an id of its own and a case', () => {
    const ids = RULES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(Object.keys(RULE_CASES).sort()).toEqual([...ids].sort());
  });

  for (const rule of RULES) {
    it(`${rule.id} speaks where it must`, () => {
      expect(rule.applies(contextOf(speaking(rule)))).toBe(true);
    });
    if (!ALWAYS.includes(rule.id)) {
      it(`${rule.id} keeps silent where it must`, () => {
        expect(rule.applies(contextOf(madeRun(RULE_CASES[rule.id]!.silent)))).toBe(false);
      });
    }
  }
});

describe('the words of every rule', () => {
  for (const rule of RULES) {
    const metric = spoken(rule, 'metric');
    const us = spoken(rule, 'us');

    it(`${rule.id} proves every number it says by a figure`, () => {
      const said = numbersIn(metric.text);
      const unproved = said.filter((number) => !provedBy(number, metric.figures));
      expect(unproved, metric.text).toEqual([]);
    });

    it(`${rule.id} gives figures without holes`, () => {
      for (const [name, value] of Object.entries(metric.figures)) {
        if (typeof value === 'number') expect(Number.isFinite(value), name).toBe(true);
        else expect(value, name).not.toBe('');
      }
    });

    it(`${rule.id} says nothing broken in either unit system`, () => {
      for (const text of [metric.text, us.text]) {
        expect(text).not.toMatch(/undefined|NaN|null|Infinity|\s\s|\[object/);
        expect(text).toMatch(/^[A-Z0-9]/);
        expect(text).toMatch(/[.]$/);
      }
      expect(us.text.replaceAll('Bq/m³', '')).not.toMatch(/°C|\bm²|\bm³|\bmm\b|\bkg\b/);
    });

    it(`${rule.id} does not scold`, () => {
      expect(metric.text).not.toMatch(
        /\b(should have|wrong of you|foolish|obviously|simply|of course|never mind)\b/i,
      );
      expect(metric.text).not.toContain('!');
    });

    if (rule.kind === 'caution') {
      it(`${rule.id} names its source`, () => {
        expect(metric.figures.source).toBeTypeOf('string');
      });
    }
  }
});

test('a caution is told by its id', () => {
  for (const rule of RULES) expect(isCaution(rule), rule.id).toBe(rule.kind === 'caution');
});

describe('the findings of a run', () => {
  it('come gravest first', () => {
    const order = ['danger', 'warning', 'note', 'good'];
    const findings = findingsOf(madeRun(RULE_CASES['too-hot']!.speaks));
    const ranks = findings.map(({ severity }) => order.indexOf(severity));
    expect(ranks).toEqual([...ranks].sort((one, other) => one - other));
    expect(findings.map(({ id }) => id)).toContain('too-hot');
  });

  it('are danger when the rooms are too hot for more than a tenth of the year', () => {
    const mild = findingsOf(madeRun({ house: { airC: (hour) => (hour < 800 ? 30 : 20) } }));
    const grave = findingsOf(madeRun({ house: { airC: (hour) => (hour < 1000 ? 30 : 20) } }));
    expect(mild.find(({ id }) => id === 'too-hot')?.severity).toBe('warning');
    expect(grave.find(({ id }) => id === 'too-hot')?.severity).toBe('danger');
  });

  it('ask for an engineer from 0.9 m of earth against a wall laid up loose, and praise no sunspace that can kill', () => {
    const idsOf = (made: Parameters<typeof madeRun>[0]) => findingsOf(madeRun(made)).map(({ id }) => id);
    const lined = (wallLining: string) => ({ design: { envelope: { bermShare: 0.35, wallLining } } });
    expect(idsOf(lined('earth-tyres'))).toContain('caution-retaining');
    expect(idsOf(lined('plasterboard'))).not.toContain('caution-retaining');
    const hot = (hour: number) => (hour > 5000 && hour < 5040 ? 46 : 21);
    const shut = {
      design: { sunspace: { join: 'closed' as const } },
      sunspace: { airC: hot, relativeHumidity: 0.4 },
    };
    expect(idsOf(shut)).not.toContain('sunspace-pleasant');
    const said = findingsOf(madeRun(shut)).find(({ id }) => id === 'caution-hot-sunspace')!;
    expect(said.severity).toBe('danger');
    expect(said.text).toContain('never leave a child, a pet');
  });

  it('do not praise little heat where too little air comes in', () => {
    const idsOf = (made: Parameters<typeof madeRun>[0]) => findingsOf(madeRun(made)).map(({ id }) => id);
    expect(idsOf({ house: { ventAch: 0.5 } })).toContain('little-heat-needed');
    expect(idsOf({ house: { ventAch: 0.1 } })).not.toContain('little-heat-needed');
    expect(idsOf({ house: { ventAch: 0.5, co2Ppm: 2200 } })).not.toContain('little-heat-needed');
  });

  it('name the radon level of the country where the site is, and its body', () => {
    const said = (latitudeDeg: number, longitudeDeg: number) =>
      findingsOf(madeRun({ climate: { latitudeDeg, longitudeDeg } })).find(
        ({ id }) => id === 'caution-radon',
      )!;
    // Levels: review of action levels in a European respiratory journal, 2017
    expect(said(40, -105).text).toContain(
      'is 148 Bq/m³ (4 pCi/L) in the United States, by the US EPA. The World Health Organization asks for less than 100 Bq/m³, and never more than 300.',
    );
    expect(said(40, -105).text).not.toContain('Canada');
    expect(said(53.5, -113.5).text).toContain('is 200 Bq/m³ in Canada, by Health Canada.');
    expect(said(54.6, -5.9).text).toContain('is 200 Bq/m³ in the United Kingdom.');
    expect(said(53.3, -6.3).text).toContain('is 200 Bq/m³ in Ireland.');
    expect(said(40.4, -3.7).text).toContain('is 300 Bq/m³ at most in a state of the European Union.');
    // On a border both stand side by side: Detroit and Windsor, Derry and Donegal.
    expect(said(42.3, -83.05).text).toContain(
      'by the US EPA and 200 Bq/m³ in Canada, by Health Canada: take',
    );
    expect(said(55, -7.4).text).toContain(
      '200 Bq/m³ in the United Kingdom, 200 Bq/m³ in Ireland and 300 Bq/m³',
    );
    expect(said(-38.3, -72).text).toContain('The World Health Organization asks for less than 100 Bq/m³');
    expect(said(-38.3, -72).text).not.toContain('calls for action');
    for (const [latitudeDeg, longitudeDeg] of [
      [40, -105],
      [42.3, -83.05],
      [-38.3, -72],
    ] as const) {
      expect(said(latitudeDeg, longitudeDeg).figures.source).toMatch(/WHO: review of action levels/);
    }
  });
});

/** The run in which a rule must speak, made once. */
function speaking(rule: Rule): Run {
  const run = speakingRuns.get(rule.id) ?? madeRun(RULE_CASES[rule.id]!.speaks);
  speakingRuns.set(rule.id, run);
  return run;
}

function spoken(rule: Rule, units: 'metric' | 'us') {
  const context = contextOf({ ...speaking(rule), units });
  return { text: rule.text(context), figures: rule.figures(context) };
}

/** Numbers in a text as they are printed; those glued to letters (TM52) are names. */
function numbersIn(text: string): string[] {
  return [...text.matchAll(/(?<![A-Za-z\d.])[−-]?\d+(?:\.\d+)?(?![\dA-Za-z])/g)].map(([match]) =>
    match.replace('−', '-'),
  );
}

/** Whether a printed number is a figure, rounded to what it shows, in one of the units figures are said in. */
function provedBy(
  number: string,
  figures: Rule['figures'] extends (context: never) => infer F ? F : never,
): boolean {
  const decimals = number.split('.')[1]?.length ?? 0;
  const said = Number(number);
  return Object.values(figures).some((value) => {
    if (typeof value === 'string') return numbersIn(value).includes(number) || value.includes(number);
    return (
      [1, 100, 1000, 0.001].some((scale) => {
        const exact = value * scale;
        const steps = decimals === 0 ? [1, 10, 50] : [1];
        return steps.some((step) => {
          const rounded = step * Math.round((exact * 10 ** decimals) / step);
          return Math.abs(rounded / 10 ** decimals - said) < 1e-9;
        });
      }) || [value - 1].some((more) => Math.round(100 * more) === said)
    );
  });
}
