// Where a weather file is from, as a person types it: latitude, longitude, name, elevation, hours from UTC. Text in,
// hints for the reader out once they make sense; what a file says itself stands in the fields from the start.

import { degreesIn } from '../../places/coordinates.ts';
import type { SiteHints } from '../../weather/read-result.ts';
import { toShown, toSi, type UnitSystem, unitOf } from '../parts/display-unit.ts';
import { typedNumber } from '../parts/number-text.ts';

export interface SiteTexts {
  readonly latitude: string;
  readonly longitude: string;
  readonly name: string;
  readonly elevation: string;
  readonly utcOffset: string;
}

/** Texts to start with. */
export function siteTexts(
  known: {
    readonly latitudeDeg: number | null;
    readonly longitudeDeg: number | null;
    readonly elevationM: number | null;
  } | null,
  system: UnitSystem,
): SiteTexts {
  const text = (value: number | null | undefined) => (value == null ? '' : String(value));
  const elevation =
    known?.elevationM == null ? null : Math.round(toShown(known.elevationM, 'elevation', system));
  return {
    latitude: text(known?.latitudeDeg),
    longitude: text(known?.longitudeDeg),
    name: '',
    elevation: text(elevation),
    utcOffset: '',
  };
}

/** Hints out of the texts; null while something needed is missing or out of its limits. */
export function siteHints(texts: SiteTexts, system: UnitSystem): SiteHints | null {
  const latitudeDeg = degreesIn(texts.latitude, 'latitude');
  const longitudeDeg = degreesIn(texts.longitude, 'longitude');
  if (latitudeDeg === null || longitudeDeg === null) return null;
  const shownElevation = texts.elevation.trim() === '' ? null : typedNumber(texts.elevation);
  const utcOffsetH = texts.utcOffset.trim() === '' ? null : typedNumber(texts.utcOffset);
  const elevationM = shownElevation === null ? null : toSi(shownElevation, 'elevation', system);
  if (texts.elevation.trim() !== '' && !(elevationM !== null && elevationM >= -450 && elevationM <= 6000))
    return null;
  if (texts.utcOffset.trim() !== '' && !(utcOffsetH !== null && Math.abs(utcOffsetH) <= 14)) return null;
  const name = texts.name.trim();
  return {
    latitudeDeg,
    longitudeDeg,
    ...(name === '' ? {} : { name }),
    ...(elevationM === null ? {} : { elevationM }),
    ...(utcOffsetH === null ? {} : { utcOffsetH }),
  };
}

/** The five fields. */
export function SiteFields({
  texts,
  onChange,
  system,
  needsElevation = false,
}: {
  texts: SiteTexts;
  onChange: (texts: SiteTexts) => void;
  system: UnitSystem;
  needsElevation?: boolean;
}) {
  const [low, high] = [-450, 6000].map((m) => Math.round(toShown(m, 'elevation', system)));
  const fields: readonly (readonly [keyof SiteTexts, string])[] = [
    ['latitude', 'Latitude, such as 39.5° S or −39.5'],
    ['longitude', 'Longitude, such as 71.2° W or −71.2'],
    ['name', 'Name of the place'],
    [
      'elevation',
      `Elevation, ${String(low).replace('-', '−')} to ${high} ${unitOf('elevation', system).sign}${needsElevation ? '' : ', if known'}`,
    ],
    ['utcOffset', 'Standard time minus UTC, −14 to 14 h, if not by the sun'],
  ];
  return (
    <>
      {fields.map(([key, label]) => (
        <label key={key}>
          {label}
          <input
            type="text"
            inputMode={key === 'elevation' || key === 'utcOffset' ? 'decimal' : 'text'}
            maxLength={60}
            data-site={key}
            value={texts[key]}
            onInput={(event) => onChange({ ...texts, [key]: event.currentTarget.value })}
          />
        </label>
      ))}
    </>
  );
}
