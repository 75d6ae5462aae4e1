// Which inputs stand together, in plain words and in the order a house is thought of. Each entry is the path of a
// number (limits.ts) or of a choice (choice-list.ts); `when` hides what has no meaning for the design.

import type { Design } from '../../design/design.ts';
import { tooHotChoice } from '../../design/too-hot-criterion.ts';

export interface InputEntry {
  readonly path: string;
  readonly kind: 'number' | 'choice';
  readonly when?: (design: Design) => boolean;
}

export interface InputGroup {
  readonly id: string;
  readonly title: string;
  readonly entries: readonly InputEntry[];
  /** shown open at first */
  readonly open: boolean;
}

const number = (path: string, when?: InputEntry['when']): InputEntry =>
  when ? { path, kind: 'number', when } : { path, kind: 'number' };
const choice = (path: string, when?: InputEntry['when']): InputEntry =>
  when ? { path, kind: 'choice', when } : { path, kind: 'choice' };

const isUndivided = (design: Design) => design.rooms === undefined;
const hasSunspace = (design: Design) => design.sunspace.join !== 'none';
const isClosed = (design: Design) => design.sunspace.join === 'closed';
const hasMass = (design: Design) => design.mass.areaM2 > 0;
const hasBed = (design: Design) => design.plants.bedM2 > 0;
const isMoved = (design: Design) => design.vents.habit !== 'never';
const isAired = (design: Design) => isMoved(design) && design.ventilation.aired !== 'never';
const hasExtract = (design: Design) => design.vents.extractAch > 0;
const isLedByHumidity = (design: Design) =>
  hasExtract(design) && design.ventilation.extractRuns === 'humidity';
const hasUnit = (design: Design) => design.ventilation.recoveryAch > 0;
const hasOverhang = (design: Design) => design.glass.overhangM > 0;

/** One temperature counts; the choice says so. */
const byOneLimit = (design: Design) => tooHotChoice(design) === 'fixed';
const hasPeople = (design: Design) => design.people.count > 0;

export const INPUT_GROUPS: readonly InputGroup[] = [
  {
    id: 'glass',
    title: 'Glass to the sun',
    open: true,
    entries: [
      choice('glass.basis'),
      number('glass.value'),
      number('glass.tiltDeg'),
      choice('glass.type'),
      number('glass.overhangM'),
      number('glass.overhangGapM', hasOverhang),
      number('glass.frameShare'),
      number('glass.otherShareOfFloor'),
    ],
  },
  {
    id: 'covers',
    title: 'Shades and covers',
    open: false,
    entries: [number('glass.summerShade'), number('glass.nightResistance')],
  },
  {
    id: 'sunspace',
    title: 'Sunspace',
    open: true,
    entries: [
      choice('sunspace.join'),
      number('sunspace.depthM', hasSunspace),
      number('sunspace.lengthM', hasSunspace),
      choice('sunspace.commonWallMaterial', isClosed),
      number('sunspace.commonWallM', isClosed),
      number('sunspace.commonGlassM2', isClosed),
      number('sunspace.doorM2', isClosed),
      choice('sunspace.doorRule', isClosed),
      choice('sunspace.endWalls', hasSunspace),
      number('air.sunspaceAch50', hasSunspace),
    ],
  },
  {
    id: 'mass',
    title: 'Mass and floor',
    open: true,
    entries: [
      number('mass.areaM2'),
      choice('mass.material', hasMass),
      number('mass.thicknessM', hasMass),
      choice('mass.place', hasMass),
      choice('floor.material'),
      number('floor.thicknessM'),
      choice('floor.cover'),
      number('floor.resistance'),
      number('floor.edgeResistance'),
    ],
  },
  {
    id: 'vents',
    title: 'Vents and habits',
    open: false,
    entries: [
      number('vents.sunspaceM2', hasSunspace),
      number('vents.houseM2'),
      number('vents.stackM'),
      number('vents.opensAboveC'),
      choice('vents.habit'),
      choice('ventilation.aired', isMoved),
      number('ventilation.airedMinutes', isAired),
      number('ventilation.airedTimes', isAired),
      number('vents.nightPurgeAch'),
      number('vents.extractAch'),
      choice('ventilation.extractRuns', hasExtract),
      number('ventilation.extractHumidity', isLedByHumidity),
      number('ventilation.recoveryAch'),
      number('ventilation.recoveryEffectiveness', hasUnit),
      number('ventilation.fanWPerM3H', hasUnit),
      choice('ventilation.frost', hasUnit),
      number('vents.sunspaceFanAch', isClosed),
    ],
  },
  {
    id: 'house',
    title: 'House',
    open: false,
    entries: [
      number('house.floorAreaM2'),
      number('house.equatorWallM'),
      number('house.ceilingHeightM'),
      number('house.storeys', isUndivided),
      number('house.turnDeg'),
    ],
  },
  {
    id: 'envelope',
    title: 'Walls, roof, earth',
    open: false,
    entries: [
      number('envelope.bermShare'),
      number('envelope.wallResistance'),
      number('envelope.roofResistance'),
      choice('envelope.wallLining'),
      number('envelope.wallLiningM'),
      number('air.ach50'),
      number('air.shelter'),
    ],
  },
  {
    id: 'people',
    title: 'People and plants',
    open: false,
    entries: [
      number('people.count'),
      choice('people.awayWorkdays'),
      choice('people.awayWeekends'),
      choice('people.living'),
      number('people.appliancesW'),
      number('plants.bedM2'),
      number('plants.leafAreaIndex', hasBed),
      choice('plants.soil', hasBed),
    ],
  },
  {
    id: 'comfort',
    title: 'Back-up heat and limits',
    open: false,
    entries: [
      number('heating.dayC'),
      number('heating.nightC'),
      number('heating.capacityKW'),
      choice('comfort.criterion'),
      number('comfort.overheatC', byOneLimit),
      number('comfort.airSpeedMs', hasPeople),
      number('comfort.underheatC'),
      number('comfort.humidLimit'),
    ],
  },
];
