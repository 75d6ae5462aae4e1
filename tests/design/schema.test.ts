import { expect, test } from 'vitest';
import { EXAMPLES } from '../../src/design/examples.ts';
import { LIMITS } from '../../src/design/limits.ts';
import { describeDesignFault, parseDesign } from '../../src/design/schema.ts';

const modest = () => structuredClone(EXAMPLES.find((example) => example.id === 'modest')!.design);

/** Set a dotted path on a copy of plain data. */
function withValue(data: unknown, path: string, value: unknown): unknown {
  const copy = structuredClone(data) as Record<string, unknown>;
  const keys = path.split('.');
  let at = copy;
  for (const key of keys.slice(0, -1)) at = at[key] as Record<string, unknown>;
  at[keys.at(-1)!] = value;
  return copy;
}

test('every example is a valid design', () => {
  for (const example of EXAMPLES)
    expect(parseDesign(example.design)).toEqual({ ok: true, design: example.design });
});

test('every number is refused just outside its limits and named with value and limits', () => {
  expect(LIMITS.length).toBeGreaterThan(40);
  for (const limit of LIMITS) {
    for (const bad of [limit.min - 1, limit.max + 1, Number.NaN, '3', null]) {
      const result = parseDesign(withValue(modest(), limit.path, bad));
      expect(result.ok, `${limit.path} = ${bad}`).toBe(false);
      if (result.ok) continue;
      const line = describeDesignFault(result.faults[0]!);
      expect(line).toContain(limit.path);
      expect(line).toContain(String(limit.max));
    }
  }
});

test('a file that says nothing of ventilation has no unit and an extract fan that runs all the time', () => {
  const { ventilation: _, ...old } = modest();
  const result = parseDesign({ ...old, vents: { ...old.vents, extractAch: 0.3 } });
  expect(result).toMatchObject({
    ok: true,
    design: { vents: { extractAch: 0.3 }, ventilation: { extractRuns: 'always', recoveryAch: 0 } },
  });
});

test('a misspelt key, a missing block and things that are no design are refused by name', () => {
  const misspelt = parseDesign(withValue(modest(), 'glass.titlDeg', 60));
  expect(misspelt).toMatchObject({ ok: false, faults: [{ path: 'glass.titlDeg' }] });
  const missing = parseDesign(withValue(modest(), 'glass', undefined));
  expect(missing).toMatchObject({ ok: false, faults: [{ path: 'glass', value: 'missing' }] });
  for (const nothing of [null, 3, 'x', [], {}]) expect(parseDesign(nothing).ok).toBe(false);
});

test('glass that does not fit its front is refused with what would fit', () => {
  const result = parseDesign(withValue(withValue(modest(), 'glass.basis', 'area'), 'glass.value', 200));
  expect(result).toMatchObject({ ok: false, faults: [{ path: 'glass.value' }] });
  if (!result.ok) expect(result.faults[0]!.allowed).toContain('35.10 m²');
});

test('a sunspace longer than its wall is refused', () => {
  const open = withValue(modest(), 'sunspace.join', 'open');
  expect(parseDesign(withValue(open, 'sunspace.lengthM', 20))).toMatchObject({
    ok: false,
    faults: [{ path: 'sunspace.lengthM' }],
  });
});
