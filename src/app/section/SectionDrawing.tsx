// The live cross-section: marks, handles and the sun. It draws whatever design is in the workspace; dragging a
// handle changes that design, and the year follows. While a drag lasts the frame stands still.

import type { ComponentChildren } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { Design } from '../../design/design.ts';
import { withValueAt } from '../../design/design-path.ts';
import type { Year } from '../../network/year.ts';
import { type ColourScale, comfortScale } from '../parts/colour-scale.ts';
import { useElementWidth } from '../parts/element-width.ts';
import { quantityText } from '../parts/number-text.ts';
import { onScreen } from '../parts/screen-scale.ts';
import { fittedDesign } from '../state/design-fit.ts';
import { useWorkspace } from '../state/session-context.ts';
import type { Workspace } from '../state/workspace.ts';
import { HandleKnob } from './HandleKnob.tsx';
import { HourBar } from './HourBar.tsx';
import { type Handle, sectionHandles } from './handles.ts';
import { flowMarks, hourSunMarks, hourWordMarks, massMarks, roomFills, zoneTexts } from './hour-marks.ts';
import { type HourState, hourState } from './hour-state.ts';
import { furnishingMarks, personMarks, ventMarks } from './inside-marks.ts';
import { MarkLayer } from './MarkLayer.tsx';
import { point, word } from './mark.ts';
import { PlanDrawing } from './PlanDrawing.tsx';
import { cutRooms, partitionMarks, roomAreaMarks, roomNameMarks } from './room-marks.ts';
import { type SectionFrame, sectionFrame } from './section-frame.ts';
import { sectionShape } from './section-shape.ts';
import { sectionWords } from './section-words.ts';
import { glassMarks, groundMarks, roomMarks, shellMarks } from './shell-marks.ts';
import { lightMarks, noonLight, sunMarks } from './sun-marks.ts';

const LEAST_WIDTH_PX = 280;

/** The drawing is told in words once, on the whole; its parts are not read out. */
const UNSPOKEN = { 'aria-hidden': true } as const;

/** @param besidePlans what stands beside the plans of a divided house */
export function SectionDrawing({ besidePlans }: { besidePlans: ComponentChildren }) {
  const workspace = useWorkspace();
  const { ref, width } = useElementWidth<HTMLDivElement>();
  const view = hourView(workspace);
  const design = workspace.design.value;
  const [picked, setPicked] = useState<string | null>(null);
  const preview = workspace.preview.value;
  return (
    <>
      <div ref={ref} class="section-drawing">
        {width !== null && (
          <Drawing
            widthPx={Math.max(LEAST_WIDTH_PX, width)}
            workspace={workspace}
            view={view}
            picked={picked}
          />
        )}
        {preview && (
          <p class="ghost-line" data-ghost="words">
            As it would be: {preview.words}
          </p>
        )}
      </div>
      {design.rooms && (
        <PlanDrawing fills={fillsOf(workspace, view)} picked={picked} pick={setPicked}>
          {besidePlans}
        </PlanDrawing>
      )}
      <HourBar state={view?.state ?? null} />
    </>
  );
}

interface HourView {
  readonly state: HourState;
  readonly year: Year;
}

/** The hour asked for, when the answer on screen can show it. */
function hourView(workspace: Workspace): HourView | null {
  const hour = workspace.hour.value;
  const answer = workspace.answer.value;
  const climate = workspace.climate.value;
  if (hour === null || !answer || climate.state !== 'ready') return null;
  return { state: hourState(answer.year, climate.year, answer.job.design, hour), year: answer.year };
}

interface DrawingProps {
  readonly widthPx: number;
  readonly workspace: Workspace;
  readonly view: HourView | null;
  /** the room that the section cuts; null for the first */
  readonly picked: string | null;
}

function scaleOf({ design, answer }: Workspace): ColourScale {
  const { underheatC, overheatC } = design.value.comfort;
  return onScreen(
    comfortScale(underheatC, answer.value?.outcome.zones.house.tooHot.lowestLimitC ?? overheatC),
  );
}

/** Tints of the zones at the hour shown; none without. */
function fillsOf(workspace: Workspace, view: HourView | null): Readonly<Record<string, string>> {
  return view ? roomFills(view.state, scaleOf(workspace)) : {};
}

function Drawing({ widthPx, workspace, view, picked }: DrawingProps) {
  const design = workspace.design.value;
  const system = workspace.units.value;
  const climate = workspace.climate.value;
  const latitudeDeg = climate.state === 'ready' ? climate.year.site.latitudeDeg : 40;
  const svg = useRef<SVGSVGElement>(null);
  const frozen = useRef<SectionFrame | null>(null);
  const [activeId, setActiveId] = useState<string | null>(null);

  const shape = sectionShape(design);
  const frame =
    frozen.current && frozen.current.widthPx === widthPx ? frozen.current : sectionFrame(shape, widthPx);
  const lights = noonLight(shape, design, latitudeDeg);
  const handles = sectionHandles(shape, design);
  const preview = workspace.preview.value;
  const active = handles.find((handle) => handle.id === activeId) ?? null;

  const scale = scaleOf(workspace);
  const fills = fillsOf(workspace, view);
  const cut = cutRooms(design, picked);
  const sun = view
    ? hourSunMarks(shape, design, view.state)
    : { under: lightMarks(lights), over: sunMarks(shape, lights, widthPx < 480, frame.pxPerM) };
  const strips = view?.year.history
    ? massMarks(shape, design, view.year.history, view.state.hour, scale)
    : [];

  const toDrawing = (event: PointerEvent) => {
    const rect = svg.current!.getBoundingClientRect();
    return { x: event.clientX - rect.left, y: event.clientY - rect.top };
  };
  const move = (handle: Handle) => (value: number, gesture: string) => {
    // Snapping may ask for a hair more glass than fits; the fitted design is what counts.
    const fitted = fittedDesign(withValueAt(design, handle.path, value)).design;
    if (fitted === design || value === handle.value) return;
    // Rooms are no numbers of the list that set() holds to.
    if (handle.path.startsWith('rooms.')) workspace.replace(fitted, [], gesture);
    else workspace.set(handle.path, value, gesture);
  };

  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing with handles in it is a group, and no fieldset
    <svg
      ref={svg}
      width={frame.widthPx}
      height={frame.heightPx}
      viewBox={`0 0 ${frame.widthPx} ${frame.heightPx}`}
      role="group"
      aria-label={sectionWords(design, lights, latitudeDeg, system)}
    >
      <SoilHatch />
      <g {...UNSPOKEN}>
        <MarkLayer frame={frame} marks={groundMarks(shape, frame)} />
        <MarkLayer frame={frame} marks={roomMarks(shape, fills)} />
        <MarkLayer frame={frame} marks={roomAreaMarks(cut, fills)} />
        <MarkLayer frame={frame} marks={sun.under} />
        <MarkLayer frame={frame} marks={furnishingMarks(shape)} />
        <MarkLayer frame={frame} marks={personMarks(shape)} />
        <MarkLayer frame={frame} marks={shellMarks(shape, design, picked)} />
        <MarkLayer frame={frame} marks={partitionMarks(design, cut)} />
        <MarkLayer frame={frame} marks={strips} />
        <MarkLayer frame={frame} marks={glassMarks(shape, design)} />
        <MarkLayer frame={frame} marks={ventMarks(shape, design)} />
        <MarkLayer frame={frame} marks={sun.over} />
        {preview && <Ghost design={preview.design} frame={frame} />}
        {view && <MarkLayer frame={frame} marks={flowMarks(shape, design, view.state)} />}
        <MarkLayer
          frame={frame}
          marks={roomNameMarks(cut, view ? zoneTexts(view.state, system) : {}, frame.pxPerM)}
        />
        {view && <MarkLayer frame={frame} marks={hourWordMarks(shape, view.state, system, frame.pxPerM)} />}
        <MarkLayer
          frame={frame}
          marks={[
            word(
              'side-word',
              point(frame.right - 0.15, shape.gradeY - 0.45),
              latitudeDeg >= 0 ? 'south →' : 'north →',
              'end',
            ),
            word(
              'side-word',
              point(frame.left + 0.15, shape.gradeY - 0.45),
              latitudeDeg >= 0 ? '← north' : '← south',
              'start',
            ),
          ]}
        />
      </g>
      {handles.map((handle) => (
        <HandleKnob
          key={handle.id}
          handle={handle}
          px={frame.toPx(handle.at)}
          system={system}
          active={handle.id === activeId}
          toDrawing={toDrawing}
          toMetres={frame.toMetres}
          onShow={(shown) => {
            if (!frozen.current) setActiveId(shown ? handle.id : null);
          }}
          onStart={() => {
            frozen.current = frame;
            setActiveId(handle.id);
          }}
          onMove={move(handle)}
          onEnd={() => {
            frozen.current = null;
            setActiveId(null);
          }}
          onCancel={(gesture) => workspace.history.cancel(gesture)}
        />
      ))}
      {active && (
        <HandleFigure
          at={frame.toPx(active.at)}
          widthPx={frame.widthPx}
          text={`${active.label} ${quantityText(active.value, active.quantity, system)}`}
        />
      )}
    </svg>
  );
}

/** The outlines of another design over this one. */
function Ghost({ design, frame }: { design: Design; frame: SectionFrame }) {
  const shape = sectionShape(design);
  return (
    <g class="ghost" data-ghost="drawing">
      <MarkLayer
        frame={frame}
        marks={[
          ...furnishingMarks(shape),
          ...shellMarks(shape, design),
          ...glassMarks(shape, design),
          ...ventMarks(shape, design),
        ]}
      />
    </g>
  );
}

function HandleFigure({
  at,
  widthPx,
  text,
}: {
  at: { x: number; y: number };
  widthPx: number;
  text: string;
}) {
  const wide = text.length * 7.2 + 16;
  const x = Math.min(widthPx - wide - 2, Math.max(2, at.x - wide / 2));
  const y = at.y > 48 ? at.y - 42 : at.y + 18;
  return (
    <g class="handle-figure" transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`} {...UNSPOKEN}>
      <rect width={wide} height={24} rx={2} />
      <text x={wide / 2} y={16.5} text-anchor="middle">
        {text}
      </text>
    </g>
  );
}

function SoilHatch() {
  return (
    <defs>
      <pattern
        id="soil-hatch"
        width="9"
        height="9"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(38)"
      >
        <line class="hatch-line" x1="0" y1="0" x2="0" y2="9" />
      </pattern>
      <pattern
        id="insulation-hatch"
        width="5"
        height="5"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(-45)"
      >
        <line class="hatch-line" x1="0" y1="0" x2="0" y2="5" />
      </pattern>
    </defs>
  );
}
