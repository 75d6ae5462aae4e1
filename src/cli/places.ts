// `places NAME`: places of the world by name or coordinates, best first; with `--normals` the monthly normals looked up for
// the first, as a file that `--weather` takes once it has been corrected by hand.

import { lookedUp, placesFor } from '../places/looked-up.ts';
import { type Command, type CommandResult, refused } from './command.ts';
import { placeFiles } from './place-data.ts';
import { placeAsked } from './place-weather.ts';
import { textTable } from './text-table.ts';
import { wholeNumberOf } from './whole-number.ts';

const MOST = { min: 1, max: 100, usual: 20 };

export const placesCommand: Command = {
  name: 'places',
  usage: 'places NAME | "LATITUDE, LONGITUDE" [--most N] [--normals] [--json]',
  line: 'places of the world by name: name, region, country, latitude, longitude, elevation; best first',
  valued: ['most', 'elevation', 'exposure'],
  switches: ['json', 'normals'],
  details: [
    'NAME in any spelling, or its beginning, with region or country behind it: "Santa Fe, New Mexico"',
    '--normals: the monthly normals looked up for the first place, as JSON that --weather takes',
    '  with --elevation M for its height, --exposure sheltered | open | ridge | coast for how it lies to the wind',
  ],
  positionals: [1, 1],
  run: async (args) => {
    const name = args.positionals[0]!;
    if (args.switches.has('normals')) return normalsFor(name, args);
    const idle = ['elevation', 'exposure'].filter((flag) => args.values.has(flag));
    if (idle.length > 0)
      return refused(...idle.map((flag) => `--${flag}: given without --normals; allowed: beside it`));
    const most = wholeNumberOf(args, 'most', MOST);
    if (typeof most === 'string') return refused(most);
    const found = placesFor(name, most, await placeFiles());
    if (!found.ok) return refused(`places: ${found.fault}`);
    if (found.places.length === 0)
      return refused(
        `places: ${asked(name)} is not among the places known; allowed: a place of some 500 people or more by name, alone or with its state or country behind it, or coordinates such as "46.2, 7.4"`,
      );
    const rows = found.places.map(
      ({ name, region, country, countryCode, latitudeDeg, longitudeDeg, elevationM }) => ({
        name,
        region,
        country,
        countryCode,
        latitudeDeg,
        longitudeDeg,
        elevationM,
      }),
    );
    const output = args.switches.has('json')
      ? JSON.stringify(rows)
      : textTable(
          rows.map((row) => [
            row.name,
            row.region,
            row.country,
            row.latitudeDeg.toFixed(2),
            row.longitudeDeg.toFixed(2),
            row.elevationM,
          ]),
        );
    return { ok: true, output };
  },
};

type Arguments = Parameters<Command['run']>[0];

async function normalsFor(name: string, args: Arguments): Promise<CommandResult> {
  const asked = await placeAsked(name, 'places', args);
  if ('faults' in asked) return refused(...asked.faults);
  const files = await placeFiles();
  const { normals } = lookedUp(asked.place, asked.exposure, files, files.table);
  return { ok: true, output: JSON.stringify(normals, null, 1) };
}

/** A name as a message repeats it: cut where it is long, in quotes where nothing would be seen. */
function asked(name: string): string {
  if (name.trim() === '') return `'${name}'`;
  return name.length > 60 ? `${name.slice(0, 57)}…` : name;
}
