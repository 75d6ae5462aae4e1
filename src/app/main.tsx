// Entry of the page: reads back what was kept, starts the bridge, the workspace and the session, then draws. A link
// with a design goes before what was kept; what was kept stays one undo away.

import 'uplot/dist/uPlot.min.css';
import './style/tokens.css';
import './style/paper.css';
import './style/layout.css';
import './style/section.css';
import './style/charts.css';
import './style/compare.css';
import './style/questions.css';
import './style/take.css';
import './style/climate.css';
import './style/touch.css';
import './style/print.css';
import sampleAnswer from 'virtual:sample-answer';
import { render } from 'preact';
import { SimulationBridge } from '../../workers/bridge.ts';
import { startSimulationThread } from '../../workers/simulation-thread.ts';
import { serviceThreadOf } from '../../workers/worker-thread.ts';
import { EXAMPLES } from '../design/examples.ts';
import { climateText } from './climate/climate-texts.ts';
import { PLACE_ADDRESSES } from './climate/place-files.ts';
import { keepSheet, readKept, SHEET_KEY } from './keeping/autosave.ts';
import { browserStore } from './keeping/browser-store.ts';
import { keepOfflineCopy } from './keeping/offline-copy.ts';
import { isOwnClimate, ownClimate } from './keeping/own-climates.ts';
import { tabMark } from './keeping/tab-mark.ts';
import { listenForFiles } from './page/file-drop.ts';
import { Page } from './page/Page.tsx';
import { listenForUndo } from './page/undo-keys.ts';
import { createSession } from './state/session.ts';
import { SessionProvider } from './state/session-context.ts';
import { createWorkspace } from './state/workspace.ts';

const IDLE_MS = 120_000;
/** Two where cores are to spare for the page: on two cores a second thread takes as much from it as it gives. */
const LIVE_THREADS = navigator.hardwareConcurrency >= 4 ? 2 : 1;
/** Steps of undo that outlive a reload. */
const STEPS_KEPT = 20;

const bridge = new SimulationBridge({
  startThread: () => serviceThreadOf(startSimulationThread()),
  idleMs: IDLE_MS,
  threads: LIVE_THREADS,
});
const store = browserStore(() => localStorage);
const tab = tabMark(browserStore(() => sessionStorage));
const kept = readKept(store, tab);
const workspace = createWorkspace({
  initial: kept.design ?? EXAMPLES[0]!.design,
  earlier: kept.earlier,
  made: sampleAnswer,
  bridge,
  loadClimate: (key) => (isOwnClimate(key) ? ownClimate(key) : climateText(key)),
});
if (kept.units) workspace.units.value = kept.units;

const session = createSession({ workspace, kept: kept.versions, bridge, pageAddress: () => location.href });
for (const trouble of kept.troubles) session.tell('trouble', trouble);
if (kept.fromOtherTabs.length > 0)
  session.tell('news', `Kept as versions: ${kept.fromOtherTabs.map((name) => `"${name}"`).join(', ')}.`);

const openHash = async () => {
  const view = await session.openLink(location.hash);
  if (view !== null)
    history.replaceState(
      null,
      '',
      `${location.pathname}${location.search}${view === 'client' ? '#client' : ''}`,
    );
};
void openHash();
window.addEventListener('hashchange', () => void openHash());

let isToldOfOtherTab = false;
const tellOfOtherTab = () => {
  if (isToldOfOtherTab) return;
  isToldOfOtherTab = true;
  session.tell(
    'news',
    'This page is open in another tab too. Each tab keeps its own sheet; versions are shared.',
  );
};
const keeper = keepSheet({
  store: kept.mayWrite ? store : browserStore(() => null),
  tab,
  current: () => ({
    design: workspace.design.value,
    earlier: workspace.history.steps(STEPS_KEPT),
    versions: session.list.versions.value,
    units: workspace.units.value,
  }),
  take: (versions) => session.list.replace(versions),
  onFault: () =>
    session.tell('trouble', 'This browser keeps nothing for this page; save the design as a file.'),
});
const keepNow = () => {
  workspace.drafts.takeAll();
  keeper.writeNow();
};
window.addEventListener('pagehide', keepNow);
// A tab in the background may be thrown away without another word.
document.addEventListener('visibilitychange', () => {
  if (document.visibilityState === 'hidden') keepNow();
});
window.addEventListener('storage', ({ key }) => {
  if (key !== SHEET_KEY) return;
  keeper.heed();
  tellOfOtherTab();
});
keepOfflineCopy(PLACE_ADDRESSES, (change) =>
  session.offer('A newer version of this page is ready. Your sheet is kept.', 'Change to it', () => {
    keepNow();
    change();
  }),
);
window.addEventListener('online', () => void workspace.climateReady(workspace.design.value.climate));
listenForFiles(window, (file) => void session.openFile(file));
listenForUndo(window, workspace.history);

render(
  <SessionProvider value={session}>
    <Page />
  </SessionProvider>,
  document.getElementById('page')!,
);
