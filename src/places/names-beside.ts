// Names the list of places lacks: short ones that look like codes to it, and those of people who were there before. From memory,
// high confidence; every one is found where an atlas has it in the tests. Folded name in, name in the list and country out.

const BESIDE: Readonly<Record<string, readonly [name: string, country: string]>> = {
  nyc: ['new york city', 'us'],
  // Quechua
  qosqo: ['cusco', 'pe'],
  // Māori
  'tamaki makaurau': ['auckland', 'nz'],
  'te whanganui a tara': ['wellington', 'nz'],
  poneke: ['wellington', 'nz'],
  'te papaioea': ['palmerston north', 'nz'],
  'turanga nui a kiwa': ['gisborne', 'nz'],
  // Iñupiaq and Inuktitut
  utqiagvik: ['barrow', 'us'],
  qikiqtagruk: ['kotzebue', 'us'],
  kangiqliniq: ['rankin inlet', 'ca'],
  kinngait: ['cape dorset', 'ca'],
  mittimatalik: ['pond inlet', 'ca'],
};

/** Under which name and country the list has it; null where it is not one of these. */
export function nameInList(folded: string): readonly [name: string, country: string] | null {
  return Object.hasOwn(BESIDE, folded) ? BESIDE[folded]! : null;
}

/** What ends the name of a region in Chinese, Japanese and Korean; and of a town, which the list often leaves out. */
const REGION_END = /[都道府県縣省도]/g;
const TOWN_END = /[市町村县縣시군]$/;

/**
 * A region and a place written together, the larger first ("長野県松本市", "경기도 수원시"): every way to part them.
 *
 * @param folded a name in one of these scripts
 * @returns region without its ending, and the place as written and without its ending; likeliest first
 */
export function regionBefore(folded: string): readonly { region: string; names: readonly string[] }[] {
  const name = folded.replaceAll(' ', '');
  return [...name.matchAll(REGION_END)].flatMap(({ index }) => {
    const [region, place] = [name.slice(0, index), name.slice(index + 1)];
    const bare = place.replace(TOWN_END, '');
    return region === '' || place.length < 2 || bare === ''
      ? []
      : [{ region, names: [...new Set([place, bare])] }];
  });
}
