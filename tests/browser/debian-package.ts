// Debian as root: install a program the tests need, as the README promises for a bare machine.
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

/** Whether the package is there now; false anywhere but on Debian as root. */
export function installPackage(name: string): boolean {
  if (!existsSync('/etc/debian_version') || process.getuid?.() !== 0) return false;
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  const apt = (...given: string[]) => spawnSync('apt-get', given, { env, stdio: 'ignore' }).status === 0;
  return apt('update', '-qq') && apt('install', '-y', '-qq', '--no-install-recommends', name);
}
