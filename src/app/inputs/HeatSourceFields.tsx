// Where the back-up heat comes from: a menu, then what that choice asks for, its rarer numbers behind a fold. Every change is
// one step of undo.

import type { Design } from '../../design/design.ts';
import {
  FUELS,
  type Fuel,
  type HeatSource,
  SOURCE_LIMITS,
  STOVE_KINDS,
  STOVE_TIMES,
  type StoveKind,
  type StoveSource,
  type StoveTimes,
  USUAL_STOVE,
} from '../../design/heat-source.ts';
import { FUEL_WORDS, LIT_BY_WORDS, STOVE_WORDS, timesWords } from '../../findings/fuel-words.ts';
import { WOODS, type WoodId } from '../../physics/wood-fuel.ts';
import { useWorkspace } from '../state/session-context.ts';
import { EntryNumber } from './EntryNumber.tsx';
import { LabelledMenu } from './LabelledMenu.tsx';

/** By what the search finds these inputs. */
export const HEAT_SOURCE_WORDS =
  'back-up heat comes from stove wood masonry heater fuel electricity gas propane oil pellets heated floor wall boiler';

const KIND_WORDS: readonly (readonly [string, string])[] = [
  ['', 'a heater, fuel not told'],
  ['heater', 'a heater'],
  ['floor', 'a heated floor'],
  ['wall', 'a heated wall, in the extra mass'],
  ['stove', 'a wood stove'],
];

export function HeatSourceFields() {
  const workspace = useWorkspace();
  const design = workspace.design.value;
  const { source } = design.heating;
  const put = (next: HeatSource | undefined, gesture = '') =>
    workspace.replace(withSource(workspace.design.value, next), [], gesture);
  if (design.heating.capacityKW <= 0) return null;
  return (
    <div class="heat-source">
      <LabelledMenu
        known={{ 'data-heat': 'kind' }}
        label="It comes from"
        value={source?.kind ?? ''}
        options={KIND_WORDS}
        choose={(kind) => put(sourceOfKind(kind, source))}
      />
      {source !== undefined && source.kind !== 'stove' && (
        <>
          <LabelledMenu
            known={{ 'data-heat': 'fuel' }}
            label="Fuel"
            value={source.fuel}
            options={FUELS.map((fuel) => [fuel, FUEL_WORDS[fuel]])}
            choose={(fuel) => put({ ...source, fuel: fuel as Fuel })}
          />
          <Efficiency source={source} put={put} />
        </>
      )}
      {source?.kind === 'stove' && <StoveFields stove={source} put={put} />}
    </div>
  );
}

type Put = (next: HeatSource | undefined, gesture?: string) => void;

function StoveFields({ stove, put }: { readonly stove: StoveSource; readonly put: Put }) {
  const set = (change: Partial<StoveSource>, gesture = '') => put({ ...stove, ...change }, gesture);
  return (
    <>
      <LabelledMenu
        known={{ 'data-heat': 'stove' }}
        label="Stove"
        value={stove.stove}
        options={STOVE_KINDS.map((kind) => [kind, STOVE_WORDS[kind]])}
        choose={(kind) => set({ stove: kind as StoveKind })}
      />
      <LabelledMenu
        known={{ 'data-heat': 'lit' }}
        label="Lit"
        value={stove.lit}
        options={STOVE_TIMES.map((time) => [time, timesWords(time, stove.stove)])}
        choose={(lit) => set({ lit: lit as StoveTimes })}
      />
      <LabelledMenu
        known={{ 'data-heat': 'litBy' }}
        label="When"
        value={stove.litBy}
        options={Object.entries(LIT_BY_WORDS)}
        choose={(litBy) => set({ litBy: litBy as StoveSource['litBy'] })}
      />
      <LabelledMenu
        known={{ 'data-heat': 'air' }}
        label="Air for the fire"
        value={stove.air}
        options={[
          ['room', 'from the room'],
          ['own', 'by a pipe of its own'],
        ]}
        choose={(air) => set({ air: air as StoveSource['air'] })}
      />
      <details>
        <summary>More about the stove and its wood</summary>
        <LabelledMenu
          known={{ 'data-heat': 'wood' }}
          label="Wood"
          value={stove.wood}
          options={WOODS.map(({ id, words }) => [id, words])}
          choose={(wood) => set({ wood: wood as WoodId })}
        />
        <EntryNumber
          name="moisture"
          known={{ 'data-heat': 'moisture' }}
          limit={{ label: 'Water in it, of its weight', ...SOURCE_LIMITS.moisture }}
          quantity="share"
          required={true}
          value={stove.moisture}
          change={(moisture, gesture) => moisture !== undefined && set({ moisture }, gesture)}
        />
        <EntryNumber
          name="floorShare"
          known={{ 'data-heat': 'floorShare' }}
          limit={{ label: 'Into the floor by a back boiler', ...SOURCE_LIMITS.floorShare }}
          quantity="share"
          value={stove.floorShare}
          change={(share, gesture) => put(withNumber(stove, 'floorShare', share), gesture)}
        />
        {stove.floorShare !== undefined && stove.floorShare > 0 && (
          <EntryNumber
            name="storeL"
            known={{ 'data-heat': 'storeL' }}
            limit={{ label: 'Water store before the floor', ...SOURCE_LIMITS.storeL }}
            quantity="litres"
            value={stove.storeL}
            change={(litres, gesture) => put(withNumber(stove, 'storeL', litres), gesture)}
          />
        )}
        <Efficiency source={stove} put={put} />
      </details>
    </>
  );
}

function Efficiency({ source, put }: { readonly source: HeatSource; readonly put: Put }) {
  return (
    <EntryNumber
      name="efficiency"
      known={{ 'data-heat': 'efficiency' }}
      limit={{ label: 'Heat used of what the fuel holds', ...SOURCE_LIMITS.efficiency }}
      quantity="share"
      value={source.efficiency}
      change={(efficiency, gesture) => put(withNumber(source, 'efficiency', efficiency), gesture)}
    />
  );
}

/** The design with such a source; without one as it was before sources were told. */
function withSource(design: Design, source: HeatSource | undefined): Design {
  const { source: _, ...heating } = design.heating;
  return { ...design, heating: source === undefined ? heating : { ...heating, source } };
}

/** What two kinds have in common is kept. */
function sourceOfKind(kind: string, before: HeatSource | undefined): HeatSource | undefined {
  if (kind === 'stove') return before?.kind === 'stove' ? before : USUAL_STOVE;
  if (kind !== 'heater' && kind !== 'floor' && kind !== 'wall') return undefined;
  return before !== undefined && before.kind !== 'stove' ? { ...before, kind } : { kind, fuel: 'electric' };
}

/** The source with a number of its own, or the usual one where none is given. */
function withNumber<S extends HeatSource>(
  source: S,
  key: 'efficiency' | 'floorShare' | 'storeL',
  value: number | undefined,
): S {
  const { [key as keyof S]: _, ...rest } = source;
  return (value === undefined ? rest : { ...rest, [key]: value }) as S;
}
