import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type SiteServer, serveSite } from '../../src/cli/site-server.ts';

let folder = '';
let server: SiteServer;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'daystone-'));
  mkdirSync(join(folder, 'assets'));
  writeFileSync(join(folder, 'index.html'), '<!doctype html><title>t</title>');
  writeFileSync(join(folder, 'assets/a.js'), 'export {};');
  writeFileSync(join(folder, 'assets/a.css'), 'a {}');
  writeFileSync(join(folder, 'assets/a.txt'), 'a');
  writeFileSync(join(folder, 'assets/a.svg'), '<svg xmlns="http://www.w3.org/2000/svg"/>');
  server = await serveSite(folder, 0);
});
afterAll(async () => {
  await server.close();
  rmSync(folder, { recursive: true });
});

describe('the served site', () => {
  it('stands on this computer only, at a port that was free', () => {
    expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
  });

  it('gives each kind of file its type', async () => {
    for (const [path, type] of [
      ['', 'text/html'],
      ['assets/a.js', 'text/javascript'],
      ['assets/a.css', 'text/css'],
      ['assets/a.txt', 'text/plain'],
      ['assets/a.svg', 'image/svg+xml'],
    ]) {
      const response = await fetch(`${server.address}${path}`);
      expect(response.status, path).toBe(200);
      expect(response.headers.get('content-type'), path).toContain(type);
    }
  });
});
