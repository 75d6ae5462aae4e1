import { expect, test, vi } from 'vitest';
import { keepSheet, readKept, type Store } from '../../../src/app/keeping/autosave.ts';
import { createDesignHistory } from '../../../src/app/state/design-history.ts';
import { withValueAt } from '../../../src/app/state/design-path.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';

const design = EXAMPLES[1]!.design;

function memory(): Store & { readonly held: Map<string, string> } {
  const held = new Map<string, string>();
  return {
    held,
    getItem: (key) => held.get(key) ?? null,
    setItem: (key, value) => void held.set(key, value),
  };
}

test('what was kept comes back: design, versions, units', () => {
  vi.useFakeTimers();
  const store = memory();
  const history = createDesignHistory(design);
  const versions = [{ id: '1', name: 'first', design }];
  keepSheet(
    store,
    () => ({ design: history.design.value, versions, units: 'us' }),
    () => {},
  );
  const changed = withValueAt(design, 'glass.tiltDeg', 77);
  history.change(changed, '');
  vi.advanceTimersByTime(1000);
  expect(readKept(store)).toEqual({ design: changed, versions, units: 'us', troubles: [] });
  vi.useRealTimers();
});

test('leaving the page writes at once', () => {
  const store = memory();
  const history = createDesignHistory(design);
  const writeNow = keepSheet(
    store,
    () => ({ design: history.design.value, versions: [], units: 'metric' }),
    () => {},
  );
  writeNow();
  expect(readKept(store).design).toEqual(design);
});

test('a damaged entry is set aside, told, and the rest still opens', () => {
  const store = memory();
  store.setItem(
    'daystone.sheet',
    JSON.stringify({
      design: { version: 1 },
      versions: [
        { id: '1', name: 'good', design },
        { id: '2', name: 'bad' },
      ],
    }),
  );
  const kept = readKept(store);
  expect(kept.design).toBe(null);
  expect(kept.versions.map(({ name }) => name)).toEqual(['good']);
  expect(kept.troubles).toHaveLength(2);
  expect(store.held.get('daystone.sheet.unread')).toContain('"bad"');
});

test('text that is no JSON, and storage that throws, are survived', () => {
  const store = memory();
  store.setItem('daystone.sheet', '{oops');
  expect(readKept(store)).toMatchObject({ design: null, versions: [] });
  const refusing: Store = {
    getItem() {
      throw new Error('no');
    },
    setItem() {
      throw new Error('no');
    },
  };
  expect(readKept(refusing).design).toBe(null);
  let told = 0;
  const write = keepSheet(
    refusing,
    () => ({ design, versions: [], units: 'metric' }),
    () => {
      told++;
    },
  );
  write();
  write();
  expect(told).toBe(1);
});
