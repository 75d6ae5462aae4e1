// What people call countries, and the letters they write for states and provinces. A code of ISO 3166-1 in; the name in
// English, and what may stand behind a place's name, folded, out. Names in other languages are the platform's own.

import { foldedName } from './folded-name.ts';

/** Names of countries beside those the platform knows. */
const ALSO_CALLED: Readonly<Record<string, string>> = {
  usa: 'US',
  america: 'US',
  uk: 'GB',
  britain: 'GB',
  uae: 'AE',
  holland: 'NL',
  turkey: 'TR',
  burma: 'MM',
  'ivory coast': 'CI',
};
/** Beside a country's first language; those of countries with several, and of their neighbours. */
const LANGUAGES = ['de', 'es', 'fr', 'it', 'nl', 'pt'];
/** Letters of the post for regions whose code in the list is a number. From memory, high confidence. */
const LETTERS: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  AU: {
    'Australian Capital Territory': 'ACT',
    'New South Wales': 'NSW',
    'Northern Territory': 'NT',
    Queensland: 'QLD',
    'South Australia': 'SA',
    Tasmania: 'TAS',
    Victoria: 'VIC',
    'Western Australia': 'WA',
  },
  CA: {
    Alberta: 'AB',
    'British Columbia': 'BC',
    Manitoba: 'MB',
    'New Brunswick': 'NB',
    'Newfoundland and Labrador': 'NL',
    'Northwest Territories': 'NT',
    'Nova Scotia': 'NS',
    Nunavut: 'NU',
    Ontario: 'ON',
    'Prince Edward Island': 'PE',
    Quebec: 'QC',
    Saskatchewan: 'SK',
    Yukon: 'YT',
  },
};

interface Languages {
  readonly DisplayNames: new (
    languages: readonly string[],
    options: { type: 'region' },
  ) => { readonly of: (code: string) => string | undefined };
  readonly Locale: new (tag: string) => { maximize(): { readonly language: string } };
}
const { Intl: languages } = globalThis as unknown as { readonly Intl: Languages };

/** The country's English name as the platform knows it; '' for what is no code. */
export function countryName(code: string): string {
  return nameIn('en', code);
}

/** What a country is called: in English, in its own language, by its neighbours, by its code; folded. */
export function countryWords(code: string): readonly string[] {
  let words = known.get(code);
  if (words === undefined) {
    const also = Object.keys(ALSO_CALLED).filter((word) => ALSO_CALLED[word] === code);
    const spoken = isCode(code)
      ? ['en', new languages.Locale(`und-${code}`).maximize().language, ...LANGUAGES]
      : [];
    const names = spoken.map((language) => foldedName(nameIn(language, code)));
    words = [...new Set([...names, foldedName(code), ...also])];
    known.set(code, words);
  }
  return words;
}

/** The letters people write for a state or province. */
export function regionLetters(countryCode: string, region: string): readonly string[] {
  const letters = LETTERS[countryCode]?.[region];
  return letters === undefined ? [] : [letters];
}

const known = new Map<string, readonly string[]>();
const namesIn = new Map<string, InstanceType<Languages['DisplayNames']>>();

function nameIn(language: string, code: string): string {
  if (!isCode(code)) return '';
  let names = namesIn.get(language);
  if (names === undefined) {
    names = new languages.DisplayNames([language, 'en'], { type: 'region' });
    namesIn.set(language, names);
  }
  return names.of(code) ?? code;
}

const isCode = (code: string) => /^[A-Z]{2}$/.test(code);
