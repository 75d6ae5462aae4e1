// One colour a cause, the same in every chart; the colours themselves are in charts.css. Neighbours in a stack differ
// in lightness as well as in hue.

const SLOTS: Readonly<Record<string, string>> = {
  sun: 'sun',
  'people and appliances': 'people',
  people: 'people',
  heating: 'heating',
  cooling: 'cooling',
  'evaporation and dew': 'dew',
  air: 'air',
  'heat recovered': 'plants',
  'fans and frost heater': 'cooling',
  glass: 'glass',
  walls: 'walls',
  roof: 'roof',
  ground: 'ground',
  'other zones': 'zones',
  sunspace: 'zones',
  rooms: 'zones',
  cooking: 'heating',
  washing: 'glass',
  drying: 'roof',
  plants: 'plants',
  'wet soil': 'ground',
  soil: 'ground',
};
const SPARE = ['air', 'walls', 'zones', 'dew', 'roof'];

/** Which of the colours a cause has. */
export function causeSlot(cause: string): string {
  return (
    SLOTS[cause] ?? SPARE[[...cause].reduce((sum, letter) => sum + letter.charCodeAt(0), 0) % SPARE.length]!
  );
}

/** Class that colours a cause. */
export function causeClass(cause: string): string {
  return `cause cause-${causeSlot(cause)}`;
}
