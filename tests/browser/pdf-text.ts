// The text of a PDF, page by page, by pdftotext of the package poppler-utils. On Debian as root it is installed;
// otherwise one line says what to install.
import { execFileSync, spawnSync } from 'node:child_process';
import { installPackage } from './debian-package.ts';

/** Throws with one line when there is no pdftotext. */
export function requirePdftotext(): void {
  const isThere = () => spawnSync('pdftotext', ['-v'], { stdio: 'ignore' }).error === undefined;
  if (isThere() || (installPackage('poppler-utils') && isThere())) return;
  throw new Error('no pdftotext: install poppler-utils (Debian), or poppler, to read the printed reports');
}

/** Text of each page, words parted by single spaces. */
export function pdfPages(file: string): string[] {
  const text = execFileSync('pdftotext', ['-layout', '-enc', 'UTF-8', file, '-'], { encoding: 'utf8' });
  return text
    .split('\f')
    .slice(0, -1)
    .map((page) => page.replace(/\s+/g, ' ').trim());
}
