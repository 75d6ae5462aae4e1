// Pictures for paper and files: nothing cut off, nothing empty, nothing told by colour alone.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { axisTicks } from '../../../src/app/parts/axis.ts';
import { causePaint } from '../../../src/app/pictures/cause-paint.ts';
import { label, type Picture, type Shape, shape } from '../../../src/app/pictures/picture.ts';
import { pictureText } from '../../../src/app/pictures/picture-text.ts';
import { type SheetPictureName, sheetPicture } from '../../../src/app/pictures/sheet-picture.ts';
import { bandBoxes } from '../../../src/app/pictures/year-picture.ts';
import { exampleAnswer } from './made-answer.ts';

/** Mean width of a letter of the page's typeface, in sizes; broader than most words are. */
const LETTER = 0.56;
const NAMES: readonly SheetPictureName[] = [
  { name: 'section' },
  { name: 'year' },
  { name: 'year', layer: 'house-humidity' },
  { name: 'year', layer: 'heating' },
  { name: 'year', layer: 'outdoor' },
  { name: 'week', kind: 'hot', firstHour: 4824 },
  { name: 'week', kind: 'cold', firstHour: 8592 },
  { name: 'balance' },
  { name: 'months', of: 'moisture', zone: 'house' },
];

function all(shapes: readonly Shape[]): Shape[] {
  return shapes.flatMap((entry) => [entry, ...(Array.isArray(entry.inside) ? all(entry.inside) : [])]);
}

/** Words that would stand outside the picture. */
function cutWords({ width, height, shapes }: Picture): string[] {
  return all(shapes)
    .filter(({ tag }) => tag === 'text')
    .filter(({ attributes, inside }) => {
      const text = inside as string;
      const wide = text.length * Number(attributes['font-size']) * LETTER;
      const anchor = attributes['text-anchor'];
      const x = Number(attributes.x);
      const from = anchor === 'end' ? x - wide : anchor === 'middle' ? x - wide / 2 : x;
      return from < -1 || from + wide > width + 1 || Number(attributes.y) > height;
    })
    .map(({ inside }) => inside as string);
}

for (const id of ['leaning', 'closed', 'modest']) {
  for (const units of ['metric', 'us'] as const) {
    test(`the pictures of ${id} in ${units} units are whole`, async () => {
      const { answer, climate } = await exampleAnswer(id, units);
      for (const name of NAMES) {
        const picture = sheetPicture(name, { answer, climate, system: units });
        const text = pictureText(picture);
        expect(text, picture.id).not.toMatch(/NaN|undefined|Infinity|null/);
        expect(cutWords(picture), picture.id).toEqual([]);
        expect(all(picture.shapes).length, picture.id).toBeGreaterThan(20);
        expect(text.length, picture.id).toBeLessThan(150_000);
        expect(picture.words.length).toBeGreaterThan(20);
      }
    });
  }
}

test('the section carries its dimensions in the units asked for', async () => {
  const { answer, climate } = await exampleAnswer('leaning');
  const words = (system: 'metric' | 'us') =>
    all(sheetPicture({ name: 'section' }, { answer, climate, system }).shapes)
      .filter(({ tag }) => tag === 'text')
      .map(({ inside }) => String(inside).replaceAll('\u202f', ' '));
  // 110 m² on 13.5 m of front is 8.15 m deep; the sunspace 2.4 m, the rooms 2.6 m high; 38 m² over 13.5 m is 2.81 m.
  expect(words('metric')).toEqual(
    expect.arrayContaining(['8.15 m', '2.40 m', '2.60 m', 'glass 2.81 m', 'at 60°']),
  );
  // The same by 0.3048 m to the foot and 0.0254 m to the inch: 26.73, 7.87, 8.53 and 9.23 ft.
  expect(words('us')).toEqual(
    expect.arrayContaining(['26 ft 9 in', '7 ft 10 in', '8 ft 6 in', 'glass 9 ft 3 in']),
  );
});

test('every hour of the year is painted once, in its own band', () => {
  const hour = fc.constantFrom(5, 12, 16, 16.5, 21, 26, 30.5);
  fc.assert(
    fc.property(fc.array(hour, { minLength: 24, maxLength: 24 * 9 }), (values) => {
      const hours = Float64Array.from(values.slice(0, Math.floor(values.length / 24) * 24));
      const edges = [12, 16, 26];
      const painted = new Float64Array(hours.length).fill(-1);
      for (const { band, day, days, from, to } of bandBoxes(hours, edges)) {
        for (let d = day; d < day + days; d++) {
          for (let h = from; h < to; h++) {
            expect(painted[d * 24 + h]).toBe(-1);
            painted[d * 24 + h] = band;
          }
        }
      }
      expect([...painted]).toEqual([...hours].map((value) => edges.filter((edge) => value > edge).length));
    }),
  );
});

test('causes of heat differ in texture or in lightness, so that a black and white print tells them apart', () => {
  const causes = ['sun', 'people and appliances', 'heating', 'evaporation and dew', 'air', 'glass', 'walls'];
  causes.push('roof', 'ground', 'sunspace');
  const light = (colour: string) =>
    [0.2126, 0.7152, 0.0722].reduce(
      (sum, weight, i) => sum + weight * Number.parseInt(colour.slice(1 + 2 * i, 3 + 2 * i), 16),
      0,
    );
  for (const one of causes) {
    for (const other of causes.slice(causes.indexOf(one) + 1)) {
      const [a, b] = [causePaint(one), causePaint(other)];
      const differs = a.name !== b.name || Math.abs(light(a.colour) - light(b.colour)) > 20;
      expect(differs, `${one} and ${other}`).toBe(true);
    }
  }
});

test('an axis holds its range between round numbers', () => {
  expect(axisTicks(-7.3, 23.1, 6)).toEqual([-10, 0, 10, 20, 30]);
  expect(axisTicks(16, 16, 6).length).toBeGreaterThan(1);
});

test('a file of a picture keeps what a name may hold out of its markup', () => {
  const picture: Picture = {
    id: 'made',
    width: 10,
    height: 10,
    words: 'A & B < "C"\u0000',
    shapes: [label(1, 1, '<script>&'), shape('rect', { fill: 'a"b' })],
  };
  const text = pictureText(picture);
  expect(text).toContain('<title>A &amp; B &lt; &quot;C&quot;</title>');
  expect(text).toContain('>&lt;script&gt;&amp;</text>');
  expect(text).toContain('fill="a&quot;b"');
});
