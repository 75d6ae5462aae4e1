// Places of the world by name. The unpacked list in, a search out: a name or the beginning of one, in any spelling the list
// knows, with a region or country behind it if need be. The names stand in one long folded text, a line a place, its
// spellings apart by tabs; a search runs through it once and keeps the best.

import { countryName, countryWords, regionLetters } from './country-words.ts';
import { distanceKm, type Position } from './earth.ts';
import { foldedName, isLatin } from './folded-name.ts';
import { nameInList, regionBefore } from './names-beside.ts';
import type { Packed } from './packed.ts';

export interface Place extends Position {
  readonly name: string;
  /** state, province or the like; '' where the list has none */
  readonly region: string;
  readonly country: string;
  /** ISO 3166-1, two letters; '' for a place at sea */
  readonly countryCode: string;
  /** [m] above sea level */
  readonly elevationM: number;
}

export interface Gazetteer {
  readonly size: number;
  /** Best first; a name of other letters than Latin is found once `addScripts` has been called. */
  find(query: string, most: number): readonly Place[];
  /** Names in other scripts, unpacked. */
  addScripts(scripts: Packed): void;
  /** Places within a distance, nearest first, at most a number of them. */
  near(at: Position, withinKm: number, most: number): readonly (Place & { readonly distanceKm: number })[];
}

/** How much being spelled in full, or being the name itself, counts against inhabitants (their natural logarithm). */
const WORTH = { name: 6, otherName: 4, beginsName: 1.5, beginsOtherName: 0, word: -2 };
/** Longest query looked for [characters]. */
const LONGEST = 80;

interface Match {
  readonly i: number;
  readonly score: number;
  /** only a word within a name */
  readonly isWord: boolean;
}

interface Region {
  readonly countryCode: string;
  readonly code: string;
  readonly name: string;
  /** what may stand behind a place's name, folded; of its country shared by its regions */
  readonly words: readonly string[];
  readonly countryWords: readonly string[];
  /** its first place and the one after its last */
  readonly from: number;
  readonly to: number;
}

export function createGazetteer({ texts, columns }: Packed): Gazetteer {
  const names = texts.names!.split('\n');
  const { latitude, longitude, elevation, inhabitants } = columns as Record<string, Int16Array>;
  const regions = regionsOf(texts.regions!);
  const latin = haystack(foldedName(texts.names!).split('\n'), texts.spellings!.split('\n'));
  let scripts: Haystack | null = null;

  function place(i: number): Place {
    const region = regions[regionOf(regions, i)]!;
    return {
      name: names[i]!,
      region: region.name,
      country: countryName(region.countryCode),
      countryCode: region.countryCode,
      latitudeDeg: latitude![i]! / 100,
      longitudeDeg: longitude![i]! / 100,
      elevationM: elevation![i]!,
    };
  }

  /** Whether a place's region and country may be what the words behind its name mean; each region is asked once. */
  function fitting(behind: readonly string[]): (place: number) => boolean {
    const asked = new Int8Array(behind.length > 0 ? regions.length : 0);
    return (place) => {
      const region = regionOf(regions, place);
      if (asked[region] === 0) asked[region] = behind.every((part) => means(part, regions[region]!)) ? 1 : -1;
      return asked[region] === 1;
    };
  }

  /** The best places for a name, of those whose region and country the words behind it may mean. */
  function search(name: string, behind: readonly string[], most: number): Match[] {
    const text = isLatin(name) ? latin : scripts;
    if (text === null || name === '') return [];
    const inList = nameInList(name);
    if (inList !== null) return search(inList[0], [inList[1], ...behind], most);
    const best: Match[] = [];
    const fits = fitting(behind);
    for (const spelling of shortAndLong(name)) {
      eachMatch(text, spelling, (i, worth) => {
        const score = worth + inhabitants![i]! / 100;
        const last = best[most - 1];
        if ((last && score <= last.score) || (behind.length > 0 && !fits(i))) return;
        const before = best.findIndex((match) => match.i === i);
        if (before >= 0) {
          if (best[before]!.score >= score) return;
          best.splice(before, 1);
        }
        const at = best.findIndex((match) => match.score < score);
        best.splice(at < 0 ? best.length : at, 0, { i, score, isWord: worth === WORTH.word });
        if (best.length > most) best.pop();
      });
    }
    return best;
  }

  /** "paris texas", "paris texas usa": the words behind may be a region, a country, or both. */
  function searchSplit(name: string, most: number): Match[] {
    const words = name.split(' ');
    for (let cut = words.length - 1; cut > 0; cut--) {
      const found = search(words.slice(0, cut).join(' '), [words.slice(cut).join(' ')], most);
      if (found.some(({ isWord }) => !isWord)) return found;
    }
    return [];
  }

  /** "長野県松本市": the region stands first and is no word of its own; of places of the name, those of its seat's region. */
  function searchBehindRegion(name: string, most: number): Match[] {
    for (const { region, names } of isLatin(name) ? [] : regionBefore(name)) {
      for (const place of names) {
        const found = search(place, [], most).filter(({ isWord }) => !isWord);
        if (found.length === 0) continue;
        const seats = new Set(search(region, [], most).map(({ i }) => regionOf(regions, i)));
        const there = found.filter(({ i }) => seats.has(regionOf(regions, i)));
        return there.length > 0 ? there : found;
      }
    }
    return [];
  }

  return {
    size: names.length,
    find(query, most) {
      const parts = query
        .slice(0, LONGEST)
        .split(/[,，、،;]/)
        .map(foldedName)
        .filter((part) => part !== '');
      const [name = '', ...behind] = parts;
      const found = search(name, behind, most);
      if (behind.length > 0 || found.some(({ isWord }) => !isWord)) return found.map(({ i }) => place(i));
      const parted = [...searchSplit(name, most), ...found];
      const both = (parted.length > 0 ? parted : searchBehindRegion(name, most)).map(({ i }) => i);
      return [...new Set(both)].slice(0, most).map(place);
    },
    addScripts(packed) {
      scripts = haystack(null, packed.texts.spellings!.split('\n'));
    },
    near(at, withinKm, most) {
      const band = (withinKm / 111) * 100 + 1;
      const found: { i: number; km: number }[] = [];
      for (let i = 0; i < names.length; i++) {
        if (Math.abs(latitude![i]! - at.latitudeDeg * 100) > band) continue;
        const km = distanceKm(at, { latitudeDeg: latitude![i]! / 100, longitudeDeg: longitude![i]! / 100 });
        if (km <= withinKm) found.push({ i, km });
      }
      found.sort((a, b) => a.km - b.km);
      return found.slice(0, most).map(({ i, km }) => ({ ...place(i), distanceKm: km }));
    },
  };
}

/** Whether words behind a name mean a region or its country, or one after the other; a word that is begun will do. */
function means(part: string, region: Region): boolean {
  if (meansOne(part, region)) return true;
  for (let gap = part.indexOf(' '); gap >= 0; gap = part.indexOf(' ', gap + 1)) {
    if (meansOne(part.slice(0, gap), region) && meansOne(part.slice(gap + 1), region)) return true;
  }
  return false;
}

function meansOne(part: string, { words, countryWords }: Region): boolean {
  const begins = (word: string) => word.startsWith(part) || word.includes(` ${part}`);
  return words.some(begins) || countryWords.some(begins);
}

/** Words of names that are written in full or short; those of the second kind where a name begins. */
const SHORTENED = [
  ['st', 'saint', 'sankt'],
  ['ste', 'sainte'],
  ['mt', 'mount'],
  ['ft', 'fort'],
];
const SHORTENED_FIRST = [
  ['n', 'north'],
  ['s', 'south'],
  ['e', 'east'],
  ['w', 'west'],
];

/** A name with "St", "Mt", "Ft" or a side of the sky, spelled in full and short. */
function shortAndLong(name: string): readonly string[] {
  const words = name.split(' ');
  for (const [at, word] of words.entries()) {
    const known = at === 0 ? [...SHORTENED, ...SHORTENED_FIRST] : SHORTENED;
    const same = words.length > 1 ? known.find((spellings) => spellings.includes(word)) : undefined;
    if (same) return same.map((spelling) => words.with(at, spelling).join(' '));
  }
  return [name];
}

interface Haystack {
  readonly text: string;
  /** where each place's line begins */
  readonly starts: Int32Array;
  /** whether a line's first spelling is the name itself */
  readonly hasNames: boolean;
}

function haystack(names: readonly string[] | null, spellings: readonly string[]): Haystack {
  const lines = spellings.map((others, i) =>
    names === null ? `\t${others}` : others === '' ? names[i]! : `${names[i]!}\t${others}`,
  );
  const starts = new Int32Array(lines.length);
  let at = 1;
  for (let i = 0; i < lines.length; i++) {
    starts[i] = at;
    at += lines[i]!.length + 1;
  }
  const text = `\n${lines.join('\n')}\n`;
  // a text put together becomes one piece when it is first searched; now, and not under a keystroke
  text.indexOf('\n\t\n');
  return { text, starts, hasNames: names !== null };
}

const LINE = 10;
const TAB = 9;
const SPACE = 32;

/** Every place that has a spelling which begins with the query, or a word in one, with what the match is worth. */
function eachMatch(
  { text, starts, hasNames }: Haystack,
  query: string,
  use: (place: number, worth: number) => void,
): void {
  let line = 0;
  const visit = (at: number) => {
    const before = text.charCodeAt(at - 1);
    if (before !== LINE && before !== TAB && before !== SPACE) return;
    while (line + 1 < starts.length && starts[line + 1]! <= at) line++;
    const after = text.charCodeAt(at + query.length);
    const isWhole = after === LINE || after === TAB;
    const isName = before === LINE && hasNames;
    const worth =
      before === SPACE
        ? WORTH.word
        : isWhole
          ? isName
            ? WORTH.name
            : WORTH.otherName
          : isName
            ? WORTH.beginsName
            : WORTH.beginsOtherName;
    use(line, worth);
  };
  if (query.length > 2 || !isLatin(query)) {
    for (let at = text.indexOf(query, 1); at >= 0; at = text.indexOf(query, at + 1)) visit(at);
    return;
  }
  // One or two letters are in every name somewhere: only beginnings of spellings are looked at.
  for (const before of ['\n', '\t']) {
    line = 0;
    const wanted = before + query;
    for (let at = text.indexOf(wanted); at >= 0; at = text.indexOf(wanted, at + 1)) visit(at + 1);
  }
}

function regionsOf(text: string): Region[] {
  let from = 0;
  return text.split('\n').map((row) => {
    const [countryCode = '', code = '', name = '', count = '0'] = row.split('\t');
    const words = [name, code, ...regionLetters(countryCode, name)].map(foldedName);
    const to = from + Number(count);
    const region = { countryCode, code, name, words, countryWords: countryWords(countryCode), from, to };
    from = to;
    return region;
  });
}

function regionOf(regions: readonly Region[], place: number): number {
  let low = 0;
  let high = regions.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (regions[middle]!.to <= place) low = middle + 1;
    else high = middle;
  }
  return low;
}
