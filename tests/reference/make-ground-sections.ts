// Makes tests/data/ground-sections.json: npx tsx tests/reference/make-ground-sections.ts
// Steady state and yearly waves of 362 sections by ground-section.ts, about half a minute. Recomputed in part by
// ground-section.test.ts, so that the file cannot drift from its maker.

import { writeFileSync } from 'node:fs';
import { sectionAnswer, storedSections } from './ground-stored.ts';

const PATH = new URL('../data/ground-sections.json', import.meta.url);
const lines = storedSections().map((entry) => JSON.stringify({ ...entry, answer: sectionAnswer(entry) }));
writeFileSync(PATH, `[\n${lines.join(',\n')}\n]\n`);
console.log(`${lines.length} sections`);
