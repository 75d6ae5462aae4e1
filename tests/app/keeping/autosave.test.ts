import { signal } from '@preact/signals';
import fc from 'fast-check';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { keepSheet, readKept as readKeptOf, SHEET_KEY } from '../../../src/app/keeping/autosave.ts';
import type { Store } from '../../../src/app/keeping/browser-store.ts';
import type { KeptVersion } from '../../../src/app/keeping/kept-record.ts';
import type { TabMark } from '../../../src/app/keeping/tab-mark.ts';
import { createDesignHistory } from '../../../src/app/state/design-history.ts';
import type { Design } from '../../../src/design/design.ts';
import { withValueAt } from '../../../src/design/design-path.ts';
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

const mark = (name: string, isKnown = true): TabMark => ({
  mark: name,
  isKnown,
  renew: () => mark(`${name} doubled`),
});
const readKept = (store: Store, tab = mark('one')) => readKeptOf(store, tab);
const tilted = (tiltDeg: number): Design => withValueAt(design, 'glass.tiltDeg', tiltDeg) as Design;

/** A page in a tab: a design, versions, and its keeper. `hear` is what the browser does when another tab wrote. */
function openTab(store: Store, tab: TabMark, onFault = () => {}) {
  const kept = readKeptOf(store, tab);
  const history = createDesignHistory(kept.design ?? design, kept.earlier);
  const versions = signal<readonly KeptVersion[]>(kept.versions);
  const keeper = keepSheet({
    store,
    tab,
    current: () => ({
      design: history.design.value,
      earlier: history.steps(20),
      versions: versions.value,
      units: 'us',
    }),
    take: (next) => {
      versions.value = next;
    },
    onFault,
  });
  return { kept, history, versions, ...keeper };
}

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

test('what was kept comes back: design, steps before it, versions, units', () => {
  const store = memory();
  const { history, versions } = openTab(store, mark('one'));
  versions.value = [{ id: '1', name: 'first', design }];
  history.change(tilted(77), '');
  vi.advanceTimersByTime(1000);
  const again = openTab(store, mark('one'));
  expect(again.kept).toMatchObject({ design: tilted(77), earlier: [design], units: 'us', troubles: [] });
  expect(again.kept.versions).toEqual(versions.value);
  again.history.undo();
  expect(again.history.design.value).toEqual(design);
});

test('leaving the page writes at once', () => {
  const store = memory();
  const { history, writeNow } = openTab(store, mark('one'));
  history.change(tilted(66), '');
  writeNow();
  expect(readKept(store).design).toEqual(tilted(66));
});

test('a damaged entry is set aside, told, and the rest still opens', () => {
  const store = memory();
  const damaged = (name: string) =>
    JSON.stringify({
      design: { version: 1 },
      versions: [{ id: '1', name: 'good', design }, { id: '2', name }, null],
      others: 'none',
    });
  store.setItem(SHEET_KEY, damaged('bad'));
  const kept = readKept(store);
  expect(kept.design).toBe(null);
  expect(kept.versions.map(({ name }) => name)).toEqual(['good']);
  expect(kept.troubles).toHaveLength(3);
  expect(store.held.get('daystone.sheet.unread')).toContain('"bad"');
  store.setItem(SHEET_KEY, damaged('worse'));
  readKept(store);
  readKept(store);
  expect(store.held.get('daystone.sheet.unread')).toContain('"bad"');
  expect(store.held.get('daystone.sheet.unread.2')).toContain('"worse"');
  expect(store.held.size).toBe(3);
});

test('text that is no JSON, and storage that throws, are survived', () => {
  const store = memory();
  for (const text of ['{oops', 'null', '3', '[]', '"x"']) {
    store.setItem(SHEET_KEY, text);
    expect(readKept(store), text).toMatchObject({ design: null, versions: [], mayWrite: true });
  }
  const refusing: Store = {
    getItem() {
      throw new Error('no');
    },
    setItem() {
      throw new Error('no');
    },
  };
  let told = 0;
  const tab = openTab(refusing, mark('one'), () => {
    told++;
  });
  expect(tab.kept.design).toBe(null);
  tab.writeNow();
  tab.writeNow();
  expect(told).toBe(1);
});

test('with no room to set it aside, what does not read is not written over', () => {
  const full: Store = {
    getItem: (key) => (key === SHEET_KEY ? '{"design": {"version": 1}}' : null),
    setItem() {
      throw new DOMException('full', 'QuotaExceededError');
    },
  };
  const kept = readKept(full);
  expect(kept.mayWrite).toBe(false);
  expect(kept.troubles.join(' ')).toContain('no room to set it aside');
});

test('when there is room again the sheet is kept again, and a second refusal is told again', () => {
  const store = memory();
  let isFull = true;
  let told = 0;
  const narrow: Store = {
    getItem: store.getItem,
    setItem(key, value) {
      if (isFull) throw new DOMException('full', 'QuotaExceededError');
      store.setItem(key, value);
    },
  };
  const { history } = openTab(narrow, mark('one'), () => {
    told++;
  });
  for (const [tilt, full] of [
    [61, true],
    [62, true],
    [63, false],
    [64, true],
  ] as const) {
    isFull = full;
    history.change(tilted(tilt), '');
    vi.advanceTimersByTime(1000);
  }
  expect(told).toBe(2);
  expect(readKept(store).design).toEqual(tilted(63));
});

test('two tabs at work on one design: each comes back to its own sheet after a reload', () => {
  const store = memory();
  const one = openTab(store, mark('one', false));
  vi.advanceTimersByTime(300);
  const two = openTab(store, mark('two', false));
  vi.advanceTimersByTime(300);
  one.heed();
  two.heed();
  two.history.change(tilted(50), '');
  vi.advanceTimersByTime(300);
  one.heed();
  expect(readKept(store, mark('one')).design).toEqual(design);
  one.history.change(tilted(80), '');
  vi.advanceTimersByTime(300);
  two.heed();
  expect(readKept(store, mark('one')).design).toEqual(tilted(80));
  expect(readKept(store, mark('two')).design).toEqual(tilted(50));
});

test('the sheet of a tab that is gone becomes a version of the next visit, once', () => {
  const store = memory();
  for (const [name, tilt] of [
    ['one', 50],
    ['two', 80],
  ] as const) {
    const tab = openTab(store, mark(name, false));
    tab.history.change(tilted(tilt), '');
    // A link that replaces the sheet before anything else happens.
    tab.writeNow();
  }
  const next = openTab(store, mark('three', false));
  vi.advanceTimersByTime(300);
  const sheets = [
    next.kept.design,
    ...next.kept.earlier,
    ...next.kept.versions.map((version) => version.design),
  ];
  expect(sheets).toContainEqual(tilted(50));
  expect(next.kept.design).toEqual(tilted(80));
  expect(openTab(store, mark('four', false)).kept.versions).toEqual(next.kept.versions);
});

test('versions kept, renamed and removed in two tabs at once are all there', () => {
  const store = memory();
  const first = { id: '1', name: 'first', design };
  const second = { id: '2', name: 'second', design };
  store.setItem(SHEET_KEY, JSON.stringify({ design, versions: [first, second], units: 'metric' }));
  const one = openTab(store, mark('one', false));
  const two = openTab(store, mark('two', false));
  // Neither hears of the other before both have written.
  one.versions.value = [
    { ...first, name: 'renamed' },
    { id: '3', name: 'from one', design: tilted(50) },
  ];
  one.writeNow();
  two.versions.value = [first, second, { id: '3', name: 'from two', design: tilted(80) }];
  two.writeNow();
  one.heed();
  const names = (versions: readonly KeptVersion[]) => versions.map(({ id, name }) => `${id} ${name}`).sort();
  const wanted = ['1 renamed', '3 from one', '4 from two'];
  expect(names(two.versions.value)).toEqual(wanted);
  expect(names(one.versions.value)).toEqual(wanted);
  expect(names(readKept(store).versions)).toEqual(wanted);
});

test('a doubled tab takes a mark of its own, and neither sheet is lost', () => {
  const store = memory();
  const one = openTab(store, mark('one', false));
  vi.advanceTimersByTime(300);
  const doubled = openTab(store, mark('one'));
  vi.advanceTimersByTime(300);
  one.heed();
  one.history.change(tilted(50), '');
  vi.advanceTimersByTime(300);
  doubled.heed();
  doubled.history.change(tilted(80), '');
  vi.advanceTimersByTime(300);
  const text = store.held.get(SHEET_KEY)!;
  expect(text).toContain('"tiltDeg":50');
  expect(text).toContain('"tiltDeg":80');
});

test('whatever two tabs do in whatever order, the sheet of each and every version stay', () => {
  const act = fc.record({
    tab: fc.nat(1),
    act: fc.constantFrom('edit', 'edit', 'keep', 'wait', 'hear', 'reload', 'close'),
  });
  fc.assert(
    fc.property(fc.array(act, { maxLength: 18 }), (acts) => {
      const store = memory();
      const marks: string[] = [];
      let made = 0;
      const wanted = new Set<number>();
      const visit = (at: number) => {
        marks[at] = `visit ${++made}`;
        return openTab(store, mark(marks[at]!, false));
      };
      const tabs = [visit(0), visit(1)];
      const sheetOf = (at: number) => tabs[at]!.history.design.value.glass.tiltDeg;
      for (const { tab: at, act } of acts) {
        const open = tabs[at]!;
        if (act === 'edit') open.history.change(tilted(20 + ++made / 100), '');
        else if (act === 'wait') vi.advanceTimersByTime(300);
        else if (act === 'hear') open.heed();
        else if (act === 'keep') {
          const highest = Math.max(0, ...open.versions.value.map(({ id }) => Number(id)));
          const version = { id: String(highest + 1), name: 'kept', design: open.history.design.value };
          open.versions.value = [...open.versions.value, version];
          wanted.add(sheetOf(at));
        } else {
          open.writeNow();
          tabs[1 - at]!.heed();
          if (act === 'close') wanted.add(sheetOf(at));
          tabs[at] = act === 'close' ? visit(at) : openTab(store, mark(marks[at]!));
          if (act === 'reload') expect(sheetOf(at)).toBe(open.history.design.value.glass.tiltDeg);
        }
      }
      for (const at of [0, 1]) {
        tabs[at]!.writeNow();
        tabs[1 - at]!.heed();
        wanted.add(sheetOf(at));
      }
      for (const tilt of wanted) expect(store.held.get(SHEET_KEY)).toContain(`"tiltDeg":${tilt},`);
      vi.clearAllTimers();
    }),
    { numRuns: 400 },
  );
});
