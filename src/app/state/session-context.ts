// Hands the session, and the workspace in it, to every component without passing it through each.

import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Session } from './session.ts';
import type { Workspace } from './workspace.ts';

const SessionContext = createContext<Session | null>(null);

export const SessionProvider = SessionContext.Provider;

/** The session of the page around a component. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (!session) throw new Error('a component outside the page asked for its session');
  return session;
}

export function useWorkspace(): Workspace {
  return useSession().workspace;
}
