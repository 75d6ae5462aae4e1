// Cautions for heavy work, said where its hours are told. All defer to local codes and licensed practice.

import type { Bill } from './bill.ts';
import type { CautionId } from './items.ts';

const TEXTS: Readonly<Record<CautionId, string>> = {
  lifting:
    'Lifting: these are tonnes carried by hand. Share loads above 25 kg (55 lb), use a barrow or a hoist, and stop when your back tells you to.',
  trench:
    'Digging: earth falls in without a warning. Slope or shore what is deeper than your code allows bare, keep heaps and machines off the edge, stay out of a trench alone, and have cables and pipes traced first.',
  tyres:
    'Tyres: ramming by sledge is hard on back, hands and hearing, and a wall of them holds back earth. Have an engineer pass the wall; many places want a permit to use tyres.',
  'overhead-glass':
    'Glass overhead: codes ask for laminated or tempered panes there, and several people to lift one. Leave it to a glazier where you can.',
  ladder: 'Work at height: scaffolds and guard rails, not the top of a ladder.',
  dust: 'Dust: lime burns eyes and skin, loose insulation gets into lungs. Goggles, gloves and a mask that fits.',
};
const ORDER: readonly CautionId[] = ['trench', 'tyres', 'lifting', 'overhead-glass', 'ladder', 'dust'];
/** Loads from which lifting is worth a word [kg]. */
const HEAVY_KG = 500;
const DEFERS = 'Local codes and people who are licensed for it come before this sheet.';

/** Cautions for what stands on a bill, the gravest first; none for an empty one. */
export function cautionsOf({ lines }: Bill): readonly string[] {
  const wanted = new Set(
    lines
      .filter(({ item, weightKg }) => item.caution !== 'lifting' || (weightKg ?? 0) >= HEAVY_KG)
      .map(({ item }) => item.caution),
  );
  const told = ORDER.filter((id) => wanted.has(id)).map((id) => TEXTS[id]);
  return told.length === 0 ? [] : [...told, DEFERS];
}
