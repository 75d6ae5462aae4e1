// `ask QUESTION DESIGN`: the runs behind the answer to one question, and the finding. Tables for people, the whole
// answer as one JSON object with --json. Runs go to worker threads, one for each core unless --workers says otherwise.

import type { Design } from '../design/design.ts';
import {
  criterionOf,
  criterionOfChoice,
  ownCriterion,
  TOO_HOT_CHOICES,
  type TooHotCriterion,
} from '../design/too-hot-criterion.ts';
import { yearOfDesign } from '../model/design-climate.ts';
import { VERSION } from '../outcomes/version.ts';
import { changeBetween } from '../quantities/change.ts';
import { costOf, hasPrices, type PriceList } from '../quantities/prices.ts';
import { ask } from '../questions/ask.ts';
import { basisOf } from '../questions/basis.ts';
import { CHANGE_ORDERS, type ChangeOrder } from '../questions/change-order.ts';
import type { Answer } from '../questions/question.ts';
import { QUESTIONS, questionById } from '../questions/registry.ts';
import { parseWeights } from '../questions/weights.ts';
import { answerText } from './answer-text.ts';
import type { ParsedArguments } from './arguments.ts';
import { type Command, refused } from './command.ts';
import { readDesign } from './design-file.ts';
import { HOTTER_FLAGS, HOTTER_USAGE, hotterDesign } from './hotter-flags.ts';
import { PLACE_USAGE } from './place-weather.ts';
import { PRICES_USAGE, pricesFrom } from './prices-flag.ts';
import { createThreadPool, WORKERS } from './run-pool.ts';
import { chooseWeather, WEATHER_FLAGS } from './site-weather.ts';
import { REPEATED_WEATHER_FLAGS, WEATHER_USAGE } from './table-flags.ts';
import { wholeNumberOf } from './whole-number.ts';

/** Whole numbers a question takes, with their limits and what they are when nothing is said. */
const SIZES = {
  samples: { min: 64, max: 256, usual: 64 },
  'map-side': { min: 5, max: 41, usual: 21 },
  workers: WORKERS,
} as const;

export const askCommand: Command = {
  name: 'ask',
  usage:
    'ask QUESTION DESIGN [--climate ID | --weather FILE | --place NAME] [--above C --hours N | --criterion ID] [--weights hot=1,damp=1,cold=1,mould=1,heat=1,labour=1] [--prices FILE.csv] [--order weight | days | money] [--every-cell] [--workers N] [--json]',
  line: 'the answer to one question about a design',
  valued: [
    ...WEATHER_FLAGS,
    ...HOTTER_FLAGS,
    'above',
    'hours',
    'criterion',
    'weights',
    'prices',
    'order',
    ...Object.keys(SIZES),
  ],
  switches: ['json', 'every-cell'],
  repeated: REPEATED_WEATHER_FLAGS,
  details: [PRICES_USAGE, ...HOTTER_USAGE, ...PLACE_USAGE, ...WEATHER_USAGE],
  positionals: [2, 2],
  run: async (args, console) => {
    const [id, place] = args.positionals;
    const question = questionById(id!);
    if (question === undefined) {
      return refused(`ask: no question ${id}; allowed: ${QUESTIONS.map((entry) => entry.id).join(', ')}`);
    }
    const samples = wholeNumberOf(args, 'samples', SIZES.samples);
    if (typeof samples === 'string') return refused(samples);
    const mapSide = wholeNumberOf(args, 'map-side', SIZES['map-side']);
    if (typeof mapSide === 'string') return refused(mapSide);
    const workers = wholeNumberOf(args, 'workers', SIZES.workers);
    if (typeof workers === 'string') return refused(workers);
    const weights = parseWeights(args.values.get('weights') ?? '');
    if (typeof weights === 'string') return refused(`--weights: ${weights}`);
    const prices = await pricesFrom(args);
    if (!prices.ok) return prices;
    const order = orderAsked(args, prices.list);
    if (typeof order !== 'string') return refused(order.fault);
    const read = await readDesign(place!);
    if (!read.ok) return read;
    const hotter = hotterDesign(args, read.design);
    if ('faults' in hotter) return { ok: false, faults: hotter.faults };
    // What is proposed stands in the climate it was asked in.
    const design = { ...hotter, climate: args.values.get('climate') ?? hotter.climate };
    const fault = criterionAsked(args, design, 0);
    if (typeof fault === 'string') return refused(fault);
    const weather = await chooseWeather(args, design.climate);
    if (!weather.ok) return weather;

    const everyCell = args.switches.has('every-cell');
    const pool = createThreadPool(workers);
    pool.keepClimate('site', weather.year);
    try {
      const { site } = yearOfDesign(design, weather.year);
      const criterion = criterionAsked(args, design, site.latitudeDeg) as TooHotCriterion;
      const basis = basisOf(design, site, {
        criterion,
        weights,
        prices: prices.list,
        order,
        samples,
        mapSide,
        everyCell,
        isMade: weather.year.madeFrom !== undefined,
      });
      const answer = await ask(question, basis, pool.runner('site'), {
        onProgress: ({ done, wanted }) => console.progress(done, wanted),
      });
      const head = { daystone: VERSION, design: design.name, site };
      const output = args.switches.has('json')
        ? JSON.stringify({ ...head, ...withWork(answer, design, prices.list) })
        : `${design.hotter === undefined ? '' : `In ${site.name}.\n\n`}${answerText(answer)}`;
      return { ok: true, output };
    } finally {
      pool.close();
    }
  },
};

/** What every proposed house asks for beside the drawn one: days of work, and money where prices are given. */
function withWork(answer: Answer, drawn: Design, prices: PriceList) {
  const proposals = answer.proposals.map((proposal) => {
    const change = changeBetween(drawn, proposal.design);
    const cost = hasPrices(prices) ? costOf(change.lines, prices) : null;
    return {
      ...proposal,
      days: change.days,
      cost: cost && {
        currency: prices.currency,
        materials: cost.materials,
        wages: cost.wages,
        total: cost.total,
        missing: cost.missing.map(({ id }) => id),
      },
    };
  });
  return { ...answer, proposals };
}

function orderAsked(
  { values }: ParsedArguments,
  prices: PriceList,
): ChangeOrder | { readonly fault: string } {
  const asked = values.get('order') ?? 'weight';
  const order = CHANGE_ORDERS.find((known) => known === asked);
  if (order === undefined) return { fault: `--order: ${asked}; allowed: ${CHANGE_ORDERS.join(', ')}` };
  if (order === 'money' && !hasPrices(prices))
    return { fault: '--order: money without prices; allowed: beside --prices FILE.csv' };
  return order;
}

/** The limit of hours too hot: one by its id, one's own, or what the design counts by; or what is wrong. */
function criterionAsked(
  { values }: ParsedArguments,
  design: Design,
  latitudeDeg: number,
): TooHotCriterion | string {
  const named = values.get('criterion');
  const above = values.get('above');
  const most = values.get('hours');
  if (named !== undefined) {
    if (above !== undefined || most !== undefined)
      return '--criterion: given beside --above or --hours; allowed: one of the two';
    const choice = TOO_HOT_CHOICES.find((id) => id === named);
    return choice === undefined
      ? `--criterion: ${named}; allowed: ${TOO_HOT_CHOICES.join(', ')}`
      : criterionOfChoice(choice, design.comfort.overheatC, latitudeDeg);
  }
  if (above === undefined && most === undefined) return criterionOf(design, latitudeDeg);
  const usual = criterionOfChoice('fixed', design.comfort.overheatC, latitudeDeg);
  const aboveC = Number(above ?? usual.aboveC);
  const hours = Number(most ?? usual.hours);
  if (!(aboveC >= 22 && aboveC <= 35)) return `--above: ${above}; allowed: 22 to 35 °C`;
  if (!Number.isInteger(hours) || hours < 0 || hours > 8760)
    return `--hours: ${most}; allowed: a whole number from 0 to 8760`;
  return ownCriterion(aboveC, hours);
}
