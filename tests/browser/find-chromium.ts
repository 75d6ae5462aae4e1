// Where a Chromium or Chrome is on this machine. CHROME_PATH first, then PATH; on Debian as root it is installed;
// otherwise one line says what to install. The headless shell is the same engine without the browser's own windows,
// which cost each page of a test half as much again.
import { accessSync, constants } from 'node:fs';
import { delimiter, join } from 'node:path';
import { installPackage } from './debian-package.ts';

const NAMES = [
  'chromium-headless-shell',
  'chromium',
  'chromium-browser',
  'google-chrome',
  'google-chrome-stable',
  'chrome',
];
const MAC = '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome';

/** Path of a browser; throws with one line when there is none. */
export function findChromium(): string {
  const given = process.env.CHROME_PATH;
  if (given !== undefined && given !== '') {
    if (isExecutable(given)) return given;
    throw new Error(`CHROME_PATH is '${given}', which is no program; name a Chromium or Chrome there`);
  }
  const found =
    onPath() ??
    (isExecutable(MAC) ? MAC : null) ??
    (installPackage('chromium-headless-shell') || installPackage('chromium') ? onPath() : null);
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

function isExecutable(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
