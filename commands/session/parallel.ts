// Packs on one parallel board: may they go together, what flows between them, and what to set.

import { defineCommand, required } from '../../src/assistant/old-command.ts'
import { careCautions } from '../../src/cautions/pack-care.ts'
import { refusalWords } from '../../src/cautions/refusals.ts'
import { adviseSetting, type Setting } from '../../src/charging/setting/old-setting.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import {
  type Board,
  type BoardPack,
  type BoardRefusal,
  boardResistance_ohm,
  checkBoard,
  combinedPack,
  type Flow,
  mostApart_V,
} from '../../src/charging/upkeep/parallel.ts'
import { attempt, Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import { writePack } from '../../src/language/things/pack.ts'
import { onCharger } from '../shared/charge-options.ts'
import { figuresIn } from '../shared/figure.ts'
import { levelsOf } from '../shared/levels.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { heldWords } from '../shared/setting-words.ts'
import { cite } from '../shared/working.ts'
import { sessionPacksKind } from './session-kinds.ts'

/** Mixed cell counts are refused before it is asked what else the packs are. */
const boardPacksKind: typeof sessionPacksKind = {
  ...sessionPacksKind,
  read: (text, earlier) => {
    const read = attempt(() => sessionPacksKind.read(text, earlier))
    if (read) return read
    const counts = new Set(
      [...text.matchAll(/(?<![\p{L}\d.,])(\d{1,2}) ?s(?![\p{L}])/giu)].map(([, count]) => `${count}S`),
    )
    if (counts.size > 1) throw mixedCounts([...counts])
    return sessionPacksKind.read(text, earlier)
  },
}

function mixedCounts(counts: readonly string[]): Problem {
  return new Problem({
    what: `No: never put ${counts.join(' and ')} on one board. The packs with more cells would force a huge current into the others, and they may burn.`,
    token: counts.join(' and '),
    expected:
      'packs of one cell count, one chemistry and nearly the same volts; charge the others by themselves',
    example: 'parallel packs: 2x 3S 720 LiHV at 3.78V per cell',
    verdict: 'do not charge',
  })
}

export const parallel = defineCommand({
  name: 'parallel',
  summary: 'May these packs charge on one parallel board, and what to set for them.',
  options: {
    packs: required(boardPacksKind, {
      description: 'the packs with ";" between them, each with its resting volts behind "at"',
      phrase: text => text,
    }),
    charger: onCharger,
  },
  examples: [
    'parallel packs: 2x 3S 720 LiHV at 3.78V per cell; 3S 720 LiHV at 3.74V per cell charger: 0.5/1/2/4A 80W',
    'parallel packs: 4S 1500 LiPo 4mΩ at 3.9V per cell; 4S 1300 LiPo 5mΩ at 3.7V per cell',
    'parallel packs: 3S 850 LiPo at 3.8V per cell; 4S 850 LiPo at 3.8V per cell',
  ],
  plainWords: [
    'parallel',
    'parallel board',
    'same board',
    'charge together',
    'at the same time on',
    'on one board',
    'on a board',
    'on the same board',
  ],
  answer: ({ packs, charger }, { house, show }) => {
    const missing = packs.find(({ item }) => item.from === undefined && item.unsound === undefined)
    if (missing) throw stateMissing(missing.item.pack)
    const onBoard: BoardPack[] = packs.flatMap(({ count, item: { pack, from, unsound } }) =>
      Array.from({ length: count }, () => ({
        pack,
        from: levelsOf(pack, house, from).from,
        unsound,
      })),
    )
    const board = checkBoard(onBoard, house)
    const [first] = onBoard as [BoardPack]
    const figure = figuresIn(show)
    const flowFigures = board.flows.length > 0 ? figuresOfFlows(board, show) : []
    const situation = { pack: first.pack, ...danger(board.refusal) }
    if (board.refusal) {
      return {
        verdict: 'do not charge',
        headline: refusedWords(board.refusal, onBoard, show),
        figures: [figure.perCell('apart', 'apart per cell', board.apart_V), ...flowFigures],
        working: boardWorking(board, onBoard, show),
        cautions: careCautions('parallel', situation),
      }
    }
    const whole = combinedPack(onBoard.map(({ pack }) => pack))
    const { target } = levelsOf(whole, house)
    const setting = adviseSetting({ pack: whole, charger, target, limits: house })
    if ('refusal' in setting) return refusedAnswer(setting, situation, show)
    const largest_A = Math.max(...board.flows.map(({ atOnce_A }) => Math.abs(atOnce_A)))
    return {
      verdict: 'go with care',
      headline:
        `Yes, with care: they are ${volts(board.apart_V, show)} per cell apart. Connect them, wait ten minutes, check that they have met, then set ${show.current(setting.current_A)} and ${show.perCell(setting.cutoff.perCell_V)} per cell for all ${onBoard.length}. ${heldWords(setting.bound)}`.trim(),
      figures: [
        figure.perCell('apart', 'apart per cell', board.apart_V),
        ...flowFigures,
        figure.current('setCurrent', 'current to set for all', setting.current_A),
        figure.perCell('cutoffPerCell', 'cutoff per cell', setting.cutoff.perCell_V),
        figure.voltage('cutoffPack', 'cutoff of the board', setting.cutoffPack_V),
        figure.capacity('boardCapacity', 'capacity together', whole.capacity_Ah),
        figure.rate('cRate', 'rate', setting.rate_C),
      ],
      working: [
        ...boardWorking(board, onBoard, show),
        ...currentWorking(onBoard, whole, setting, show),
        `As they are connected up to ${show.current(largest_A)} flows between them. Check before you plug in: cell count and chemistry on every label, volts of every pack, polarity, no swollen or damaged pack, a fused board; the balance plugs last.`,
      ],
      cautions: careCautions('parallel', situation),
    }
  },
})

function stateMissing(pack: Pack): Problem {
  const text = writePack(pack)
  return new Problem({
    what: 'I need the resting volts of every pack: without them nobody can say whether they may be joined.',
    token: text,
    expected: 'each pack with its volts behind "at"',
    example: `${text} at 3.8V per cell`,
  })
}

const danger = (refusal: BoardRefusal | undefined) =>
  refusal?.kind === 'pack' ? { refusal: refusal.refusal.kind } : {}

/** Hundredths hide what decides here. */
const volts = (value_V: number, show: Show): string => `${show.number(value_V, 3)} V`

function refusedWords(refusal: BoardRefusal, packs: readonly BoardPack[], show: Show): string {
  const name = (index: number) => `${writePack((packs[index] as BoardPack).pack)} (pack ${index + 1})`
  switch (refusal.kind) {
    case 'one pack':
      return 'That is one pack: charge it alone, without a board.'
    case 'unsound':
      return `Do not connect them: ${name(refusal.pack)} is said to be ${refusal.word}. Such a pack is never charged; put it outdoors, away from anything that burns.`
    case 'cell counts':
      return `Do not connect them: ${refusal.series.map(cells => `${cells}S`).join(' and ')} packs on one board would be driven into each other with a great current. Charge each cell count apart.`
    case 'chemistries':
      return `Do not connect them: ${refusal.chemistries.map(({ name }) => name).join(' and ')} are full at different voltages. Charge each chemistry apart.`
    case 'pack': {
      const { headline, instead } = refusalWords(refusal.refusal, show)
      return `Do not connect them: ${name(refusal.pack)}. ${headline} ${instead}`
    }
    case 'voltage':
      return `Do not connect them yet: they are ${volts(refusal.apart_V, show)} per cell apart, and ${volts(refusal.most_V, show)} is the most for these.${flowWords(refusal.flow, name, show)} Charge the lower one alone until they are within ${volts(refusal.most_V, show)} per cell, or charge them one by one.`
  }
}

function flowWords(
  flow: Extract<BoardRefusal, { kind: 'voltage' }>['flow'],
  name: (index: number) => string,
  show: Show,
): string {
  if (!flow) return ''
  const way = flow.current_A > 0 ? 'into' : 'out of'
  return ` In the first minute about ${show.current(Math.abs(flow.current_A))} could flow ${way} ${name(flow.pack)}; ${show.current(flow.most_A)} is all that it may ${flow.current_A > 0 ? 'take' : 'give'}.`
}

function figuresOfFlows({ flows }: Board, show: Show) {
  const figure = figuresIn(show)
  const largest = (of: (flow: Flow) => number) => Math.max(...flows.map(flow => Math.abs(of(flow))))
  return [
    figure.current(
      'equalisingCurrent',
      'largest current as they are connected',
      largest(flow => flow.atOnce_A),
    ),
    figure.current(
      'equalisingCurrentMinute',
      'over the first minute',
      largest(flow => flow.firstMinute_A),
    ),
    figure.current(
      'equalisingCurrentLater',
      'ten minutes later',
      largest(flow => flow.later_A),
    ),
  ]
}

function boardWorking({ apart_V, flows }: Board, packs: readonly BoardPack[], show: Show): string[] {
  const lines = [`Apart: ${volts(apart_V, show)} per cell; ${cite(mostApart_V)}.`]
  if (flows.length === 0) return lines
  const [{ pack }] = packs as [BoardPack]
  const { resistanceSpread } = pack.chemistry
  return [
    ...lines,
    ...flows.map(
      ({ atOnce_A, firstMinute_A, later_A }, index) =>
        `Pack ${index + 1}, ${writePack((packs[index] as BoardPack).pack)}: ${signed(atOnce_A, show)} as it is connected, ${signed(firstMinute_A, show)} over the first minute, ${signed(later_A, show)} after ten.`,
    ),
    `Flow: volts apart ÷ resistances, then followed through the cells' circuit, with the least resistance that they may have: half of the usual (${cite(resistanceSpread)}), three quarters of a measured one; plugs and board ${show.resistance(boardResistance_ohm.value)} (${cite(boardResistance_ohm)}). No pack may take more than it may be charged with over the first minute, or give more than 2C.`,
  ]
}

const signed = (current_A: number, show: Show): string =>
  `${show.current(Math.abs(current_A))} ${current_A >= 0 ? 'in' : 'out'}`

function currentWorking(packs: readonly BoardPack[], whole: Pack, setting: Setting, show: Show): string[] {
  const { recommendedRate_C, highestRate_C } = whole.chemistry
  const sizes = packs.map(({ pack }) => show.capacity(pack.capacity_Ah)).join(' + ')
  return [
    `Together: ${sizes} = ${show.capacity(whole.capacity_Ah)}; × ${show.rate(setting.wantedRate_C)} = ${show.current(setting.wanted_A)}.`,
    `The rate is the lowest that label, chemistry (${show.rate(recommendedRate_C.value)}, ${cite(recommendedRate_C)}) and house leave, and low enough that the others may take it all where the largest pack comes unplugged (${show.rate(highestRate_C.value)} at most, ${cite(highestRate_C)}).`,
  ]
}
