// The sheet: heading with place and tools, inputs, the section with its figures beside it, the charts under it.

import { BalancePanel } from '../charts/BalancePanel.tsx';
import { VentDiary } from '../charts/VentDiary.tsx';
import { WeekPanel } from '../charts/WeekPanel.tsx';
import { YearMap } from '../charts/YearMap.tsx';
import { ClimatePanel } from '../climate/ClimatePanel.tsx';
import { WeatherQuestions } from '../climate/WeatherQuestions.tsx';
import { FigureBar } from '../figures/FigureBar.tsx';
import { FigurePanel } from '../figures/FigurePanel.tsx';
import type { Explanation } from '../figures/headline-figures.ts';
import { FindingPanel } from '../findings/FindingPanel.tsx';
import { InputPanel } from '../inputs/InputPanel.tsx';
import { AskPanel } from '../questions/AskPanel.tsx';
import { FactLine } from '../section/FactLine.tsx';
import { SectionDrawing } from '../section/SectionDrawing.tsx';
import { CompareView } from '../versions/CompareView.tsx';
import { VersionStrip } from '../versions/VersionStrip.tsx';
import { NoticeLine } from './NoticeLine.tsx';
import { SheetFoot } from './SheetFoot.tsx';
import { SheetHead } from './SheetHead.tsx';

const PICTURES: Readonly<Record<Explanation, string>> = {
  'hot-week': 'hot-week',
  'cold-week': 'cold-week',
  heat: 'heat',
  moisture: 'moisture',
  vents: 'vents',
};

export function Page() {
  return (
    <div class="sheet">
      <SheetHead />
      <NoticeLine />
      <WeatherQuestions />
      <main class="sheet-body">
        <div class="sheet-left">
          <InputPanel />
          <VersionStrip />
        </div>
        <div class="sheet-middle">
          <section class="section-panel" aria-labelledby="section-title">
            <h2 id="section-title" class="visually-hidden">
              The house in section
            </h2>
            <SectionDrawing />
            <FactLine />
          </section>
          <CompareView />
          <FindingPanel />
          <ClimatePanel />
          <AskPanel />
          <div id="year">
            <YearMap />
          </div>
          <WeekPanel kind="hot" />
          <WeekPanel kind="cold" />
          <BalancePanel kind="heat" />
          <BalancePanel kind="moisture" />
          <VentDiary />
        </div>
        <FigurePanel
          onOpen={(what) => document.getElementById(PICTURES[what])?.scrollIntoView({ block: 'start' })}
        />
      </main>
      <SheetFoot />
      <FigureBar />
    </div>
  );
}
