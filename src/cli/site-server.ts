// Serves a built site to this computer only. A folder and a port in, the address out; nothing leaves 127.0.0.1.

import { preview } from 'vite';

export interface SiteServer {
  readonly address: string;
  readonly close: () => Promise<void>;
}

/**
 * Serve a folder.
 *
 * @param folder the built site
 * @param port 1…65535, or 0 for a free one; a port in use is an error
 */
export async function serveSite(folder: string, port: number): Promise<SiteServer> {
  const server = await preview({
    logLevel: 'warn',
    build: { outDir: folder },
    preview: { host: '127.0.0.1', port, strictPort: port !== 0, open: false },
  });
  const bound = server.httpServer.address();
  if (bound === null || typeof bound === 'string') throw new Error('the server has no port');
  return {
    address: `http://127.0.0.1:${bound.port}/`,
    close: () =>
      new Promise((resolve) => {
        server.httpServer.close(() => resolve());
        if ('closeAllConnections' in server.httpServer) server.httpServer.closeAllConnections();
      }),
  };
}
