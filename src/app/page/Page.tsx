// The sheet: heading with place and tools, inputs, the section with its figures beside it, the charts under it. The
// other views take its place and leave it as it was.

import { BalancePanel } from '../charts/BalancePanel.tsx';
import { VentDiary } from '../charts/VentDiary.tsx';
import { WeekPanel } from '../charts/WeekPanel.tsx';
import { YearMap } from '../charts/YearMap.tsx';
import { ClimatePanel } from '../climate/ClimatePanel.tsx';
import { WeatherQuestions } from '../climate/WeatherQuestions.tsx';
import { FigureBar } from '../figures/FigureBar.tsx';
import type { HeadlineFigure } from '../figures/headline-figures.ts';
import { DivideOffer, RoomTable } from '../figures/RoomTable.tsx';
import { FindingPanel } from '../findings/FindingPanel.tsx';
import { FitLines } from '../inputs/FitChoice.tsx';
import { InputPanel } from '../inputs/InputPanel.tsx';
import { openRoomCard } from '../inputs/open-room-card.ts';
import { Late } from '../parts/Late.tsx';
import { AskPanel, openQuestions } from '../questions/AskPanel.tsx';
import { FactLine } from '../section/FactLine.tsx';
import { HourSection } from '../section/HourSection.tsx';
import { SectionDrawing } from '../section/SectionDrawing.tsx';
import { useSession } from '../state/session-context.ts';
import { TakePanel } from '../take/TakePanel.tsx';
import { CompareView } from '../versions/CompareView.tsx';
import { VersionStrip } from '../versions/VersionStrip.tsx';
import { SureFigures } from '../why/SureFigures.tsx';
import { VerdictPanel } from '../why/VerdictPanel.tsx';
import { NoticeLine } from './NoticeLine.tsx';
import { SheetFoot } from './SheetFoot.tsx';
import { SheetHead } from './SheetHead.tsx';
import { useView } from './view.ts';

const loadReport = () => import('../report/ReportView.tsx').then(({ ReportView }) => ReportView);
const loadClient = () => import('./ClientView.tsx').then(({ ClientView }) => ClientView);
const loadStart = () => import('../start/StartView.tsx').then(({ StartView }) => StartView);
const loadReasons = () => import('../why/WhyNote.tsx').then(({ WhyNote }) => WhyNote);
const loadBuild = () => import('../build/BuildView.tsx').then(({ BuildView }) => BuildView);
const loadTrust = () => import('../trust/TrustView.tsx').then(({ TrustView }) => TrustView);
const loadFound = () => import('../found/FoundView.tsx').then(({ FoundView }) => FoundView);
const loadProtocol = () => import('../found/ProtocolView.tsx').then(({ ProtocolView }) => ProtocolView);

export function Page() {
  const view = useView();
  return (
    <>
      <div class="sheet" hidden={view !== 'sheet'}>
        <Sheet isShown={view === 'sheet'} />
      </div>
      {view === 'own' && (
        <>
          <div class="view-notices">
            <NoticeLine />
            <WeatherQuestions />
          </div>
          <Late load={loadStart} wait="Fetching the questions…" />
        </>
      )}
      {view === 'client' && (
        <>
          <div class="view-notices">
            <NoticeLine />
          </div>
          <Late load={loadClient} wait="Fetching the house…" />
        </>
      )}
      {view === 'found' && (
        <>
          <div class="view-notices">
            <NoticeLine />
          </div>
          <Late load={loadFound} wait="Fetching the desk…" />
        </>
      )}
      {view === 'protocol' && <Late load={loadProtocol} wait="Fetching the page…" />}
      {view === 'report' && <Late load={loadReport} wait="Fetching the report…" />}
      {view === 'build' && (
        <>
          <div class="view-notices">
            <NoticeLine />
          </div>
          <Late load={loadBuild} wait="Counting what it takes…" />
        </>
      )}
      {view === 'trust' && <Late load={loadTrust} wait="Fetching the checks…" />}
    </>
  );
}

function Sheet({ isShown }: { isShown: boolean }) {
  const { asked } = useSession();
  const startOwn = () => {
    location.hash = '#own';
  };
  const showReasons = ({ id, opens }: HeadlineFigure) => {
    asked.value = { figure: id, picture: opens };
  };
  return (
    <>
      <SheetHead />
      {isShown && <NoticeLine />}
      {isShown && <WeatherQuestions />}
      <main class="sheet-body">
        <div class="sheet-left">
          <InputPanel />
          <VersionStrip />
        </div>
        <div class="sheet-middle">
          <VerdictPanel onOwn={startOwn} onAsk={() => openQuestions()} />
          <section class="section-panel" aria-labelledby="section-title">
            <h2 id="section-title" class="visually-hidden">
              The house in section
            </h2>
            <SectionDrawing
              besidePlans={
                <RoomTable
                  onAsk={() => openQuestions('which-room')}
                  onChange={(id) => void openRoomCard(id)}
                />
              }
            />
            <FactLine />
            <DivideOffer />
            <FitLines />
          </section>
          <AskPanel />
          <CompareView />
          <FindingPanel />
          <ClimatePanel />
          <div id="year">
            <YearMap beside={<HourSection />} />
          </div>
          <WeekPanel kind="hot" />
          <WeekPanel kind="cold" />
          <BalancePanel kind="heat" />
          <BalancePanel kind="moisture" />
          <VentDiary />
          <TakePanel />
        </div>
        <SureFigures
          onOpen={showReasons}
          asked={asked.value?.figure ?? null}
          reasons={<Late load={loadReasons} wait="Fetching the reasons…" />}
        />
      </main>
      <SheetFoot />
      <FigureBar />
    </>
  );
}
