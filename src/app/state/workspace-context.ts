// Hands the workspace to every component without passing it through each.

import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Workspace } from './workspace.ts';

const WorkspaceContext = createContext<Workspace | null>(null);

export const WorkspaceProvider = WorkspaceContext.Provider;

/** The workspace of the page around a component. */
export function useWorkspace(): Workspace {
  const workspace = useContext(WorkspaceContext);
  if (!workspace) throw new Error('a component outside the page asked for its workspace');
  return workspace;
}
