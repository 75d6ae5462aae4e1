// `npm run licences`: writes docs/licences.md anew.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { licencePage, shippedPackages } from './shipped-packages.ts';

const ROOT = join(import.meta.dirname, '../..');

writeFileSync(join(ROOT, 'docs/licences.md'), licencePage(shippedPackages(ROOT)));
