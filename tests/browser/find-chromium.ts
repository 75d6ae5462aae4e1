// Where a Chromium or Chrome is on this machine. CHROME_PATH first, then PATH; on Debian as root it is installed;
// otherwise one line says what to install.
import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome'];
const MAC = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';

/** Path of a browser; throws with one line when there is none. */
export function findChromium(): string {
  const given = process.env.CHROME_PATH;
  if (given !== undefined && given !== '') {
    if (isExecutable(given)) return given;
    throw new Error(`CHROME_PATH is '${given}', which is no program; name a Chromium or Chrome there`);
  }
  const found = onPath() ?? (isExecutable(MAC) ? MAC : null) ?? installed();
  if (found === null) throw new Error('no browser: install Chromium or Chrome, or name one in CHROME_PATH');
  return found;
}

function onPath(): string | null {
  for (const folder of (process.env.PATH ?? '').split(delimiter)) {
    for (const name of NAMES)
      if (folder !== '' && isExecutable(join(folder, name))) return join(folder, name);
  }
  return null;
}

/** Debian as root: install it, as the README promises for a bare machine. */
function installed(): string | null {
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0) return null;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const updated = spawnSync('apt-get', ['update', '-qq'], { env, stdio: 'ignore' });
  if (updated.status !== 0) return null;
  try {
    execFileSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], {
      env,
      stdio: 'ignore',
    });
  } catch {
    return null;
  }
  return onPath();
}

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
