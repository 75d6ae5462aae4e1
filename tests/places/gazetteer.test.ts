// Places by name: fifty of all continents and scripts, however they are spelled, and whatever else may be typed.
import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { type PlaceFiles, placeFiles } from '../../src/cli/place-data.ts';
import { distanceKm } from '../../src/places/earth.ts';
import { foldedName } from '../../src/places/folded-name.ts';
import { placesFor } from '../../src/places/looked-up.ts';
import { FIFTY_NAMES } from './fifty-names.ts';
import { NAMES_BESIDE, ODD_SPELLINGS } from './odd-spellings.ts';

let files: PlaceFiles;
beforeAll(async () => {
  files = await placeFiles();
});

/** A town is wide, and atlases put its point where they like [km]. */
const WITHIN_KM = 25;

test('there are more than a hundred thousand places, and a hundred names to try', () => {
  expect(files.gazetteer.size).toBeGreaterThan(100_000);
  expect(FIFTY_NAMES).toHaveLength(50);
  expect(ODD_SPELLINGS).toHaveLength(50);
});

test.each([...FIFTY_NAMES, ...ODD_SPELLINGS, ...NAMES_BESIDE])(
  '%s is found first',
  (name, latitudeDeg, longitudeDeg) => {
    const [first] = files.gazetteer.find(name, 5);
    expect(first).toBeDefined();
    expect(distanceKm(first!, { latitudeDeg, longitudeDeg })).toBeLessThan(WITHIN_KM);
    expect(first!.country).not.toBe('');
  },
);

describe('what is typed', () => {
  test('a beginning of a name finds it, large places first', () => {
    const found = files.gazetteer.find('reykj', 3);
    expect(found[0]).toMatchObject({ name: 'Reykjavík', countryCode: 'IS' });
    expect(files.gazetteer.find('lond', 1)[0]).toMatchObject({ countryCode: 'GB' });
  });

  test('a name in full comes before a larger place whose name begins with it', () => {
    expect(files.gazetteer.find('Bath', 1)[0]).toMatchObject({ name: 'Bath', region: 'England' });
  });

  test('a region or a country behind a name, with a comma or none, chooses among places of one name', () => {
    for (const query of ['Paris, Texas', 'paris texas', 'Paris, TX, USA']) {
      expect(files.gazetteer.find(query, 3)[0], query).toMatchObject({ region: 'Texas', countryCode: 'US' });
    }
    expect(files.gazetteer.find('Paris, Zanzibar', 3)).toEqual([]);
  });

  test('a region written before and together with a place chooses too, in Chinese, Japanese and Korean', () => {
    for (const [query, name, region] of [
      ['長野県松本市', 'Matsumoto', 'Nagano'],
      ['京都府京都市', 'Kyoto', 'Kyoto'],
      ['東京都府中市', 'Fuchū', 'Tokyo'],
      ['広島県府中市', 'Fuchūchō', 'Hiroshima'],
      ['云南省大理市', 'Dali', 'Yunnan'],
      ['경기도 수원시', 'Suwon', 'Gyeonggi-do'],
    ] as const) {
      expect(files.gazetteer.find(query, 3)[0], query).toMatchObject({ name, region });
    }
    expect(files.gazetteer.find('道道道', 3)).toEqual([]);
  });

  test('accents, capitals, hyphens and apostrophes make no difference', () => {
    const ids = ['Saint-Étienne', 'saint etienne', 'SAINT ETIENNE', 'St. Étienne'].map(
      (name) => files.gazetteer.find(name, 1)[0]?.latitudeDeg,
    );
    expect(new Set(ids).size).toBe(1);
  });

  test('anything at all gives at most as many places as asked for, each on earth', () => {
    // Any code points, halves of a pair too; the library's own strings of them take it a second to make ready.
    const anything = fc
      .array(fc.nat(0x10ffff), { maxLength: 30 })
      .map((points) => String.fromCodePoint(...points));
    const query = fc.oneof(anything, fc.string({ maxLength: 3 }));
    fc.assert(
      fc.property(query, (text) => {
        const found = placesFor(text, 7, files);
        if (!found.ok) return;
        expect(found.places.length).toBeLessThanOrEqual(7);
        for (const place of found.places) {
          expect(Math.abs(place.latitudeDeg)).toBeLessThanOrEqual(90);
          expect(Math.abs(place.longitudeDeg)).toBeLessThanOrEqual(180);
          expect(place.elevationM).toBeGreaterThan(-500);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('every place is found by its own name and region', () => {
    const { gazetteer } = files;
    for (let turn = 0; turn < 40; turn++) {
      // a walk over the earth by an irrational step, so that no region is favoured
      const latitudeDeg = ((turn * 61.8) % 120) - 50;
      const longitudeDeg = ((turn * 137.5) % 360) - 180;
      const [near] = gazetteer.near({ latitudeDeg, longitudeDeg }, 400, 1);
      if (near === undefined) continue;
      const found = gazetteer.find(`${near.name}, ${near.country}`, 40);
      expect(
        found.some((place) => distanceKm(place, near) < 0.1),
        `${near.name}, ${near.country}`,
      ).toBe(true);
    }
  });
});

test('a folded name stays what it is when folded again', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      expect(foldedName(foldedName(text))).toBe(foldedName(text));
    }),
  );
});
