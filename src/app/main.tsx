// Entry of the page: starts the bridge and the workspace, then draws. Nothing is decided here.

import '@fontsource-variable/jost/wght.css';
import 'uplot/dist/uPlot.min.css';
import './style/paper.css';
import './style/layout.css';
import './style/section.css';
import './style/charts.css';
import { render } from 'preact';
import { SimulationBridge, threadOfWorker } from '../../workers/bridge.ts';
import { startSimulationThread } from '../../workers/simulation-thread.ts';
import { EXAMPLES } from '../design/examples.ts';
import { fetchBundledClimate } from './climate/bundled-climates.ts';
import { Page } from './page/Page.tsx';
import { createWorkspace } from './state/workspace.ts';
import { WorkspaceProvider } from './state/workspace-context.ts';

const IDLE_MS = 120_000;

const bridge = new SimulationBridge({
  startThread: () => threadOfWorker(startSimulationThread()),
  idleMs: IDLE_MS,
});

const workspace = createWorkspace({
  initial: EXAMPLES[0]!.design,
  bridge,
  loadClimate: fetchBundledClimate,
});

render(
  <WorkspaceProvider value={workspace}>
    <Page />
  </WorkspaceProvider>,
  document.getElementById('page')!,
);
