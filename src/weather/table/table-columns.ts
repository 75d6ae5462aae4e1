// What each column of a table of unknown origin is: by its name, its unit and, where the unit is not written, by
// the size of its values. Every guess carries its reason in words, so that a person can confirm or correct it.
import { ROLE_WORDS, type Role, UNITS, type Unit } from './table-roles.ts';
import { type TableText, tableNumber } from './table-text.ts';

/** Names by role, most telling first; a name that matches the second pattern is another thing. */
const NAMES: readonly (readonly [Role, RegExp, RegExp | null])[] = [
  ['dewPoint', /dew|^td$|taupunkt/i, null],
  ['humidity', /^rh\b|rel.*hum|humid|^hur$|^rf$|feucht/i, /specific|absolute|ratio/i],
  ['windFrom', /(wind|^w).*(dir|from)|^wd\b|wd\d+m|^dd$|windrichtung/i, null],
  ['windSpeed', /(wind|^w).*(sp(ee)?d|vel)|^ws\b|ws\d+m|^ff$|^wind$|windgeschw/i, /gust|max/i],
  ['pressure', /press|baro|^sp$|^ps$|luftdruck/i, /sea|msl|vapou?r|deficit/i],
  ['diffuse', /diff|dhi|gd\(h\)/i, /clear/i],
  ['beam', /dni|beam|direct.*normal|normal.*direct|gb\(n\)/i, /clear|horizontal/i],
  ['skyLongwave', /long.?wave|infra|^ir\b|lw.?d|ir\(h\)|thermal.*rad/i, /up|out|net/i],
  [
    'global',
    /ghi|glob|g\(h\)|short.?wave|solar.*rad|^rad|irradi|insol|sw.?d/i,
    /clear|net|up|tilt|extra|direct|etr/i,
  ],
  ['skyCover', /cloud|cover|okta|^sky/i, /type|flag|base|height|low|mid|high/i],
  ['albedo', /albedo|reflect/i, null],
  ['rain', /^rain|precip|^rr$|niederschlag/i, /able|days|prob|type|flag|snow/i],
  [
    'dryBulb',
    /dry.?bulb|air.*temp|temp.*(air|2m|out|amb)|^temp|^t2m$|^ta$|^t$|t.?out|tair|temperature/i,
    /dew|wet|soil|ground|feel|apparent|max|min|surf|cell|sea|skin/i,
  ],
  ['time', /date.*time|time.*(utc|stamp|local)|^time$|^datetime|timestamp|^valid|^ts$|zeit/i, null],
  ['date', /^date|datum|yyyymmdd/i, null],
  ['clock', /^time|^clock|hh:?mm/i, null],
  ['year', /^(year|yr|yyyy|jahr)$/i, null],
  ['month', /^(month|mo|mm|monat)$/i, null],
  ['day', /^(day|dd|dom|tag)$/i, null],
  ['hour', /^(hour|hr|hh|stunde)$/i, null],
  ['minute', /^(minute|min|mi)$/i, null],
];

export interface ColumnGuess {
  readonly index: number;
  readonly header: string;
  readonly role: Role | null;
  readonly unit: Unit | null;
  /** why, in plain words */
  readonly reason: string;
}

/** Corrections by the person: header → role (null to leave a column out) and header → unit name. */
export interface ColumnChoices {
  readonly roles?: Readonly<Record<string, Role | null>>;
  readonly units?: Readonly<Record<string, string>>;
}

/** Guess every column, the person's choices first; each role is given once. */
export function guessColumns(table: TableText, choices: ColumnChoices = {}): readonly ColumnGuess[] {
  const taken = new Set<Role>(Object.values(choices.roles ?? {}).filter((role) => role !== null));
  return table.header.map((header, index) => {
    const chosen = choices.roles?.[header];
    if (chosen === null) return { index, header, role: null, unit: null, reason: 'left out by choice' };
    const role = chosen ?? roleByName(nameOf(header), taken);
    if (role === null) {
      const other = roleByName(nameOf(header), new Set());
      const reason =
        other === null
          ? 'the name is not known; not used'
          : `"${header}" reads as ${ROLE_WORDS[other]}, which another column is; not used`;
      return { index, header, role, unit: null, reason };
    }
    taken.add(role);
    const known =
      chosen === undefined ? `"${header}" reads as ${ROLE_WORDS[role]}` : `${ROLE_WORDS[role]} by choice`;
    const found = unitOf(role, header, choices.units?.[header], columnValues(table, index));
    return { index, header, role, unit: found.unit, reason: `${known}${found.reason}` };
  });
}

/** Name without its unit: "Temp [°C]" and "temp_degC" become Temp and temp. */
function nameOf(header: string): string {
  const bare = header.replace(/[[(][^\])]*[\])]\s*$/, '').trim();
  return bare === '' ? header : bare;
}

function roleByName(name: string, taken: ReadonlySet<Role>): Role | null {
  const spaced = name.replace(/_/g, ' ').trim();
  for (const [role, pattern, other] of NAMES) {
    const matches = pattern.test(spaced) || pattern.test(name);
    if (!taken.has(role) && matches && !(other?.test(spaced) ?? false)) return role;
  }
  return null;
}

function unitOf(
  role: Role,
  header: string,
  chosen: string | undefined,
  values: readonly number[],
): { unit: Unit | null; reason: string } {
  const units = UNITS[role];
  if (units === undefined) return { unit: null, reason: '' };
  const wanted =
    chosen === undefined ? undefined : units.find((u) => u.name === chosen || u.written.test(chosen));
  if (wanted !== undefined) return { unit: wanted, reason: `, in ${wanted.name} by choice` };
  for (const written of writtenUnits(header)) {
    const known = units.find((u) => u.name === written || u.written.test(written));
    if (known !== undefined) return { unit: known, reason: `, in ${known.name} as its header says` };
  }
  const guess = unitBySize(role, values) ?? units[0]!;
  const top = values.length === 0 ? Number.NaN : values.reduce((a, b) => Math.max(a, b));
  const size = Number.isNaN(top) ? '' : ` (its largest value is ${Number(top.toPrecision(4))})`;
  return { unit: guess, reason: `, taken to be in ${guess.name}${size}` };
}

/** Pieces of a header that may be a unit: in brackets, after a comma, after the last space or underscore. */
function writtenUnits(header: string): string[] {
  const bracket = /[[(]([^\])]*)[\])]\s*$/.exec(header)?.[1];
  const tail = header.split(/[,\s_]+/).at(-1);
  return [bracket, header.split(',')[1], tail]
    .filter((piece) => piece !== undefined)
    .map((piece) => piece.trim());
}

function unitBySize(role: Role, values: readonly number[]): Unit | null {
  const named = (name: string) => UNITS[role]?.find((u) => u.name === name) ?? null;
  if (values.length === 0) return null;
  const top = values.reduce((a, b) => Math.max(a, b));
  const low = values.reduce((a, b) => Math.min(a, b));
  switch (role) {
    case 'dryBulb':
    case 'dewPoint':
      return named(low > 150 ? 'K' : top > 56.7 ? '°F' : '°C');
    case 'humidity':
      return named(top <= 1.05 ? 'share' : '%');
    case 'pressure':
      // mmHg is never guessed: 760 is sea level in one and 2300 m in the other
      return named(top > 5000 ? 'Pa' : top > 300 ? 'hPa' : top > 40 ? 'kPa' : 'inHg');
    case 'skyCover':
      return named(top <= 1 ? 'share' : top <= 8 ? 'oktas' : top <= 10 ? 'tenths' : '%');
    case 'albedo':
      return named(top <= 1 ? 'share' : '%');
    case 'global':
    case 'beam':
    case 'diffuse':
      return named(top <= 1.6 ? 'kWh/m²' : top < 6 ? 'MJ/m²' : top > 1600 ? 'kJ/m²' : 'W/m²');
    default:
      return null;
  }
}

/** Every seventh of the column's numbers, all of a short one, without the codes for missing. */
function columnValues(table: TableText, index: number): number[] {
  const values: number[] = [];
  for (let row = 0; row < table.rows.length; row += table.rows.length > 2000 ? 7 : 1) {
    const value = tableNumber(table.rows[row]![index], table.decimalComma);
    if (!Number.isNaN(value) && value > -99) values.push(value);
  }
  return values;
}
