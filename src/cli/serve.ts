// `npm start`: builds the site and serves it on a free port of this computer only, until Ctrl-C. Prints the
// address on a line of its own. `--port N` asks for a certain port; anything else is refused.

import { build } from 'vite';
import { serveSite } from './site-server.ts';

process.exitCode = await main(process.argv.slice(2));

async function main(args: readonly string[]): Promise<number> {
  const port = portOf(args);
  if (port === null) {
    console.error(`serve: ${args.join(' ')}; allowed: --port N, N from 0 to 65535 (0 takes a free one)`);
    return 2;
  }
  await build({ logLevel: 'warn' });
  const server = await serveSite('dist', port);
  console.log('Daystone is served here until you press Ctrl-C:');
  console.log(server.address);
  for (const signal of ['SIGINT', 'SIGTERM'] as const) {
    process.once(signal, () => void server.close().then(() => process.exit(0)));
  }
  return 0;
}

/** The port asked for, 0 for a free one, null when the arguments make no sense. */
function portOf(args: readonly string[]): number | null {
  if (args.length === 0) return 0;
  const [flag, value, ...rest] = args;
  const port = Number(value);
  const sound = flag === '--port' && rest.length === 0 && /^\d{1,5}$/.test(value ?? '') && port <= 65535;
  return sound ? port : null;
}
