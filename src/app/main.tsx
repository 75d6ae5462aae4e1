// Entry of the page: reads back what was kept, starts the bridge, the workspace and the session, then draws. A link
// with a design goes before what was kept; what was kept stays one undo away.

import 'uplot/dist/uPlot.min.css';
import './style/paper.css';
import './style/layout.css';
import './style/section.css';
import './style/charts.css';
import './style/questions.css';
import './style/climate.css';
import './style/print.css';
import { render } from 'preact';
import { SimulationBridge, threadOfWorker } from '../../workers/bridge.ts';
import { startSimulationThread } from '../../workers/simulation-thread.ts';
import { EXAMPLES } from '../design/examples.ts';
import { climateText } from './climate/climate-texts.ts';
import { keepSheet, readKept } from './keeping/autosave.ts';
import { keepOfflineCopy } from './keeping/offline-copy.ts';
import { isOwnClimate, ownClimate } from './keeping/own-climates.ts';
import { listenForFiles } from './page/file-drop.ts';
import { Page } from './page/Page.tsx';
import { listenForUndo } from './page/undo-keys.ts';
import { createSession } from './state/session.ts';
import { SessionProvider } from './state/session-context.ts';
import { createWorkspace } from './state/workspace.ts';

const IDLE_MS = 120_000;

const bridge = new SimulationBridge({
  startThread: () => threadOfWorker(startSimulationThread()),
  idleMs: IDLE_MS,
});
const kept = readKept(localStorage);
const workspace = createWorkspace({
  initial: kept.design ?? EXAMPLES[0]!.design,
  bridge,
  loadClimate: (key) => (isOwnClimate(key) ? ownClimate(key) : climateText(key)),
});
if (kept.units) workspace.units.value = kept.units;

const session = createSession({ workspace, kept: kept.versions, bridge, pageAddress: () => location.href });
for (const trouble of kept.troubles) session.tell('trouble', trouble);

const openHash = async () => {
  if (await session.openLink(location.hash))
    history.replaceState(null, '', location.pathname + location.search);
};
void openHash();
window.addEventListener('hashchange', () => void openHash());

const writeNow = keepSheet(
  localStorage,
  () => ({
    design: workspace.design.value,
    versions: session.list.versions.value,
    units: workspace.units.value,
  }),
  () => session.tell('trouble', 'This browser keeps nothing for this page; save the design as a file.'),
);
window.addEventListener('pagehide', writeNow);
keepOfflineCopy((change) =>
  session.offer('A newer version of this page is ready. Your sheet is kept.', 'Change to it', () => {
    writeNow();
    change();
  }),
);
listenForFiles(window, (file) => void session.openFile(file));
listenForUndo(window, workspace.history);

render(
  <SessionProvider value={session}>
    <Page />
  </SessionProvider>,
  document.getElementById('page')!,
);
