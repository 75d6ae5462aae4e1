// The house as it is judged: of one room as it is, of several by whichever is worst in each respect, since means hide what
// people complain of. An outcome in, one zone's figures out. Heat back-up and vents are the house's in any case.

import type { OutcomeFigures, RoomOutcome, ZoneOutcome } from './outcome.ts';
import { worstDampSpot } from './worst-damp-spot.ts';

/** In what respects rooms differ; each has its own worst room. */
export type Respect = 'hot' | 'cold' | 'damp' | 'mould' | 'night' | 'stale' | 'felt';

type Judged = Pick<OutcomeFigures, 'zones' | 'rooms' | 'worst'>;

/** The worst room in a respect; null for a house of one room. */
export function worstIn({ rooms, worst }: Judged, respect: Respect): RoomOutcome | null {
  if (rooms === undefined || worst === undefined) return null;
  const byId = (id: string) => rooms.find((room) => room.id === id)!;
  const most = (of: (room: RoomOutcome) => number) =>
    rooms.reduce((found, room) => (of(room) > of(found) ? room : found));
  switch (respect) {
    case 'hot':
      return byId(worst.tooHot.room);
    case 'cold':
      return byId(worst.underheated.room);
    case 'damp':
      return byId(worst.humid.room);
    case 'mould':
      return most((room) => worstDampSpot(room).index);
    case 'night':
      return byId(worst.hotNight.room);
    case 'stale':
      return most(({ freshAir }) => freshAir.staleAirHours);
    case 'felt':
      return most(({ feltHeat }) => feltHeat.hours + (feltHeat.maxC ?? 0) / 1000);
  }
}

/** The figures a house is judged by. */
export function judgedHouse(outcome: Judged): ZoneOutcome {
  const { house } = outcome.zones;
  const of = (respect: Respect) => worstIn(outcome, respect);
  const [hot, cold, damp] = [of('hot'), of('cold'), of('damp')];
  if (hot === null || cold === null || damp === null) return house;
  const rooms = outcome.rooms!.filter(({ lived }) => lived.hoursPerDay > 0);
  const coldest = rooms.reduce(
    (least, room) => (room.minOperativeC < least.minOperativeC ? room : least),
    cold,
  );
  const warmest = rooms.reduce((most, room) => (room.maxOperativeC > most.maxOperativeC ? room : most), hot);
  const mould = of('mould')!;
  return {
    ...house,
    maxAirC: warmest.maxAirC,
    minAirC: coldest.minAirC,
    maxOperativeC: warmest.maxOperativeC,
    hottestHour: warmest.hottestHour,
    minOperativeC: coldest.minOperativeC,
    coldestHour: coldest.coldestHour,
    overheatedHours: outcome.worst!.overheated.value,
    overheatedDegreeHours: hot.overheatedDegreeHours,
    adaptiveOverheatedHours: hot.adaptiveOverheatedHours,
    tooHot: hot.tooHot,
    underheatedHours: outcome.worst!.underheated.value,
    humidHours: damp.humidHours,
    meanRelativeHumidity: damp.meanRelativeHumidity,
    mouldIndexMax: outcome.worst!.mould.value,
    dampSpots: mould.dampSpots,
    freshAir: of('stale')!.freshAir,
    feltHeat: of('felt')!.feltHeat,
    hotNightHours: outcome.worst!.hotNight.value,
    meanDailySwingK: Math.max(...outcome.rooms!.map(({ meanDailySwingK }) => meanDailySwingK)),
  };
}
