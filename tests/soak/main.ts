// `npm run soak -- houses [COUNT]` runs random designs, 10 000 unless said; `npm run soak -- page [MINUTES]` uses the
// built page at random, 60 minutes unless said. Prints what is kept in docs/soak.md; leaves with 1 when a fault showed.
import { houseReport, pageReport } from './soak-report.ts';

const USAGE = 'npm run soak -- houses [COUNT] | page [MINUTES], each with --seed N';

async function main(words: readonly string[]): Promise<number> {
  const [what, ...rest] = words;
  const seedAt = rest.indexOf('--seed');
  const seed = seedAt < 0 ? 1 : Number(rest[seedAt + 1]);
  const amount = rest[0] === undefined || rest[0].startsWith('--') ? null : Number(rest[0]);
  const isSound = Number.isInteger(seed) && (amount === null || amount > 0);
  if (!isSound || (what !== 'houses' && what !== 'page')) {
    console.error(`${words.join(' ')}; allowed: ${USAGE}`);
    return 2;
  }
  if (what === 'page') {
    const { soakPage } = await import('./page-soak.ts');
    const { servePage } = await import('../browser/served-page.ts');
    const served = await servePage();
    const result = await soakPage(served, { minutes: amount ?? 60 }, seed, (acts, heapMB) =>
      console.error(`${acts} acts, ${heapMB.toFixed(1)} MB`),
    );
    await served.close();
    console.log(pageReport(result, seed));
    return result.faults.length === 0 ? 0 : 1;
  }
  // Loaded apart, so that a browser and a build tool do not weigh on the memory that is watched.
  const { soakHouses } = await import('./house-soak.ts');
  const result = soakHouses(amount ?? 10_000, seed, (runs, heapMB) =>
    console.error(`${runs} designs, ${heapMB.toFixed(1)} MB`),
  );
  console.log(houseReport(result, seed));
  return result.faulty === 0 && result.repeats ? 0 : 1;
}

process.exitCode = await main(process.argv.slice(2));
