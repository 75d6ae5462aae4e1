import { expect, test } from 'vitest';
import { createDesignHistory } from '../../../src/app/state/design-history.ts';
import { withValueAt } from '../../../src/design/design-path.ts';
import { EXAMPLES } from '../../../src/design/examples.ts';

const start = EXAMPLES[0]!.design;
const tilted = (tiltDeg: number) => withValueAt(start, 'glass.tiltDeg', tiltDeg);

test('undo and redo walk through whole designs and give back the very same object', () => {
  const history = createDesignHistory(start);
  const one = tilted(70);
  const two = tilted(80);
  history.change(one, '');
  history.change(two, '');
  history.undo();
  expect(history.design.value).toBe(one);
  history.undo();
  expect(history.design.value).toBe(start);
  expect(history.canUndo.value).toBe(false);
  history.redo();
  history.redo();
  expect(history.design.value).toBe(two);
  expect(history.canRedo.value).toBe(false);
});

test('a drag of fifty moves is one step back', () => {
  const history = createDesignHistory(start);
  for (let i = 0; i < 50; i++) history.change(tilted(40 + i), 'drag 1');
  history.change(tilted(33), 'drag 2');
  history.undo();
  expect(history.design.value.glass.tiltDeg).toBe(89);
  history.undo();
  expect(history.design.value).toBe(start);
});

test('a new change forgets what was undone', () => {
  const history = createDesignHistory(start);
  history.change(tilted(70), '');
  history.undo();
  history.change(tilted(50), '');
  expect(history.canRedo.value).toBe(false);
  history.redo();
  expect(history.design.value.glass.tiltDeg).toBe(50);
});

test('the design before the last step is at hand for showing what changed', () => {
  const history = createDesignHistory(start);
  expect(history.before.value).toBe(null);
  history.change(tilted(70), 'drag');
  history.change(tilted(71), 'drag');
  expect(history.before.value).toBe(start);
});

test('replacing one value leaves the old design and all other blocks alone', () => {
  const next = tilted(45);
  expect(start.glass.tiltDeg).toBe(60);
  expect(next.glass.tiltDeg).toBe(45);
  expect(next.house).toBe(start.house);
});

test('a gesture that is cancelled leaves the design and no step behind; one that has ended is not touched', () => {
  const history = createDesignHistory(EXAMPLES[0]!.design);
  const first = history.design.value;
  history.change({ ...first, name: 'a' }, 'drag');
  history.change({ ...first, name: 'b' }, 'drag');
  history.cancel('drag');
  expect(history.design.value).toBe(first);
  expect(history.canUndo.value).toBe(false);
  expect(history.canRedo.value).toBe(false);
  history.change({ ...first, name: 'c' }, 'drag');
  history.change({ ...first, name: 'd' }, 'other');
  history.cancel('drag');
  expect(history.design.value.name).toBe('d');
});
