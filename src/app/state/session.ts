// Everything of one visit that is not the design itself: versions, what the page has to say, opening and taking in
// files, links. In: the workspace, the versions kept before, the bridge. Out: the actions behind the buttons, each
// of which either does its whole job or says why not and changes nothing.

import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { NumberedAnswer, SimulationBridge } from '../../../workers/bridge.ts';
import type { ClimateGlance } from '../../../workers/service.ts';
import type { Design } from '../../design/design.ts';
import { hasPrices } from '../../quantities/prices.ts';
import type { Answer } from '../../questions/question.ts';
import type { TypicalYear } from '../../weather/typical-year.ts';
import { designFromLink, designToLink, designToText } from '../keeping/design-text.ts';
import { takeFile } from '../keeping/file-intake.ts';
import type { KeptVersion } from '../keeping/kept-record.ts';
import { pricesFromLink, pricesToLink } from '../keeping/price-link.ts';
import { sharedFromLink, sharedToLink } from '../keeping/shared-link.ts';
import type { UnitSystem } from '../parts/display-unit.ts';
import { type AskedOf, isAskedOf } from './asked-of.ts';
import { type ClimateIntake, createClimateIntake } from './climate-intake.ts';
import { pricesChoice } from './prices-choice.ts';
import { createVersionList, type VersionList } from './version-list.ts';
import type { Workspace } from './workspace.ts';

export interface Notice {
  readonly id: number;
  readonly kind: 'news' | 'trouble';
  readonly text: string;
  readonly action?: { readonly label: string; readonly run: () => void };
}

/** The pictures that explain a figure. */
export type Explanation = 'hot-week' | 'cold-week' | 'heat' | 'moisture' | 'vents';

export interface AskedFigure {
  /** id among the headline figures */
  readonly figure: string;
  /** the picture that explains it */
  readonly picture: Explanation;
}

export interface ToldAnswer extends AskedOf {
  readonly question: string;
  readonly answerIn: (system: UnitSystem) => Answer;
}

export interface Session {
  readonly workspace: Workspace;
  readonly list: VersionList;
  readonly notices: ReadonlySignal<readonly Notice[]>;
  tell(kind: Notice['kind'], text: string): void;
  /** A message with a button; pressing it closes the message. */
  offer(text: string, label: string, run: () => void): void;
  dismiss(id: number): void;
  openFile(file: File): Promise<void>;
  /** weather of the person's own: files, tables, monthly normals */
  readonly intake: ClimateIntake;
  /** Which view a link opens in; null for an address that is no link, or one that could not be read. */
  openLink(hash: string): Promise<'sheet' | 'client' | null>;
  /** address of this page that holds the design */
  linkOf(design: Design): Promise<string>;
  /** the same with the person's prices, for who asks for it; null where they would make it too long */
  linkWithPrices(design: Design): Promise<string | null>;
  /** address that holds the design and every version, and opens in the client's view; null where it would be too long */
  clientLink(): Promise<string | null>;
  fileOf(design: Design): { readonly name: string; readonly text: string };
  /** Figures and doubts of a climate, worked out once. */
  glanceAt(year: TypicalYear): Promise<ClimateGlance>;
  /** answers to the questions asked in this visit, each with what it was asked of */
  readonly told: Signal<readonly ToldAnswer[]>;
  /** Of these, in the units on screen, those that are asked of the design and climate as they are. */
  toldNow(): readonly Answer[];
  /** the headline figure whose reasons are asked for, null for none */
  readonly asked: Signal<AskedFigure | null>;
  /** Year of a version, run once and remembered. */
  answerOf(design: Design): Promise<NumberedAnswer | null>;
}

export interface SessionOptions {
  readonly workspace: Workspace;
  readonly kept: readonly KeptVersion[];
  readonly bridge: Pick<SimulationBridge, 'readClimate' | 'lookAtClimate' | 'glanceAt' | 'runKept'>;
  readonly pageAddress: () => string;
}

const LINK_MARK = '#design=';
/** Parts the prices, where a link has any, from the design. */
const PRICES_MARK = '&prices=';
const CLIENT_MARK = '#client=';

export function createSession({ workspace, kept, bridge, pageAddress }: SessionOptions): Session {
  const list = createVersionList(kept);
  const notices = signal<readonly Notice[]>([]);
  const told = signal<readonly ToldAnswer[]>([]);
  const answers = new WeakMap<Design, Promise<NumberedAnswer | null>>();
  const glances = new WeakMap<TypicalYear, Promise<ClimateGlance>>();
  let notice = 0;

  const tell = (kind: Notice['kind'], text: string) => {
    // News gives way to news; trouble, and what there is to do, stands until it is closed.
    const others = notices.value.filter(
      (entry) => entry.text !== text && (kind !== 'news' || entry.kind !== 'news' || entry.action),
    );
    notices.value = [...others, { id: ++notice, kind, text }].slice(-3);
  };

  /** What is kept here stays; versions of the link come beside it, and one that is here already is not kept twice. */
  async function openShared(packed: string): Promise<'client' | null> {
    const read = await sharedFromLink(packed);
    if (!read.ok) {
      tell('trouble', read.message);
      return null;
    }
    workspace.replace(read.shared.design);
    const known = new Set(list.versions.value.map(({ design }) => JSON.stringify(design)));
    for (const { name, design } of read.shared.versions)
      if (!known.has(JSON.stringify(design))) list.keep(name, design);
    return 'client';
  }

  async function linkOf(design: Design): Promise<string> {
    return `${pageAddress().split('#')[0]}${LINK_MARK}${await designToLink(design)}`;
  }

  const offer: Session['offer'] = (text, label, run) => {
    const id = ++notice;
    const close = () => {
      notices.value = notices.value.filter((entry) => entry.id !== id);
    };
    const act = () => {
      close();
      run();
    };
    notices.value = [...notices.value, { id, kind: 'news', text, action: { label, run: act } }];
  };

  /** Prices that came with a link take nobody's place unasked. */
  async function offerPrices(packed: string): Promise<void> {
    const list = await pricesFromLink(packed);
    if (list === null) return tell('trouble', 'The prices in the link are broken or cut off; yours stand.');
    const count = Object.keys(list.prices).length;
    const before = pricesChoice.list.peek();
    offer(
      `The link brings prices too: ${count}${list.currency === '' ? '' : `, in ${list.currency}`}.`,
      hasPrices(before) ? 'Put them in place of mine' : 'Take them',
      () => {
        pricesChoice.change(() => list);
        offer('The prices of the link stand.', 'Take it back', () => pricesChoice.change(() => before));
      },
    );
  }

  const intake = createClimateIntake({ workspace, bridge, tell });

  return {
    workspace,
    list,
    notices,
    tell,
    offer,
    dismiss(id) {
      notices.value = notices.value.filter((entry) => entry.id !== id);
    },
    intake,
    told,
    toldNow() {
      const climate = workspace.climate.value;
      const design = workspace.design.value;
      const system = workspace.units.value;
      return told.value
        .filter((entry) => isAskedOf(entry, design, climate))
        .map(({ answerIn }) => answerIn(system));
    },
    asked: signal<AskedFigure | null>(null),
    async openFile(file) {
      const taken = await takeFile(file);
      if (taken.kind === 'refused') return tell('trouble', taken.message);
      if (taken.kind === 'weather') return intake.take(file.name, taken.bytes);
      workspace.replace(taken.design);
      tell('news', `Opened "${taken.design.name}" from ${file.name}. Undo brings the last design back.`);
    },
    async openLink(hash) {
      if (hash.startsWith(CLIENT_MARK)) return openShared(hash.slice(CLIENT_MARK.length));
      if (!hash.startsWith(LINK_MARK)) return null;
      const [packed = '', prices] = hash.slice(LINK_MARK.length).split(PRICES_MARK);
      const read = await designFromLink(packed);
      if (!read.ok) {
        tell('trouble', read.message);
        return null;
      }
      workspace.replace(read.design);
      tell('news', `Opened "${read.design.name}" from the link.`);
      if (prices !== undefined) await offerPrices(prices);
      return 'sheet';
    },
    linkOf,
    async linkWithPrices(design) {
      const prices = await pricesToLink(pricesChoice.list.peek());
      return prices === null ? null : `${await linkOf(design)}${PRICES_MARK}${prices}`;
    },
    async clientLink() {
      const shared = { design: workspace.design.value, versions: list.versions.value };
      const packed = await sharedToLink(shared);
      return packed === null ? null : `${pageAddress().split('#')[0]}${CLIENT_MARK}${packed}`;
    },
    fileOf(design) {
      const name = design.name
        .toLowerCase()
        .replace(/[^a-z0-9]+/g, '-')
        .replace(/^-|-$/g, '');
      return { name: `${name || 'design'}.daystone.json`, text: designToText(design) };
    },
    glanceAt(year) {
      const running = glances.get(year) ?? bridge.glanceAt(year);
      glances.set(year, running);
      running.catch(() => glances.delete(year));
      return running;
    },
    async answerOf(design) {
      const known = answers.get(design);
      if (known) return known;
      const running = (async () => {
        if (!(await workspace.climateReady(design.climate))) return null;
        return bridge.runKept({ design, climateKey: design.climate, history: false, units: 'metric' });
      })();
      answers.set(design, running);
      const answer = await running;
      if (answer === null) answers.delete(design);
      return answer;
    },
  };
}
