// Measured cell voltages judged: the spread, which cell, go or not, and how long balancing takes.

import { defineCommand, optional, required } from '../../src/assistant/old-command.ts'
import { careCautions } from '../../src/cautions/pack-care.ts'
import type { Cited } from '../../src/charging/things/chemistry.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import {
  type CellCheck,
  type CellFinding,
  type CellReadings,
  checkCells,
  spreads,
} from '../../src/charging/upkeep/cell-check.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import { cellVoltsKind, conditionKind } from '../../src/language/kinds/reading-kinds.ts'
import { cellsKind, currentKind, packKind } from '../../src/language/kinds/values.ts'
import type { CellType } from '../../src/language/things/cell-type.ts'
import { anyChemistry } from '../../src/language/things/chemistry.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { cite } from '../shared/working.ts'

/** Where no balance current is told. */
const usualBalance_A: Cited = {
  value: 0.1,
  standing: 'common practice',
  source: 'small chargers bleed 0.1 to 0.3 A from a cell',
}

export const cells = defineCommand({
  name: 'cells',
  summary: 'Judge measured cell voltages: spread, which cell, go or not, balancing time.',
  options: {
    pack: optional(packKind, { description: 'as its label says', phrase: text => text }),
    chemistry: optional(cellsKind, {
      description: 'where the capacity does not matter: no balancing time then',
      phrase: text => text,
    }),
    volts: required(cellVoltsKind, {
      description: 'one reading a cell, in the order of the balance plug',
      phrase: text => `cells at ${text}`,
    }),
    when: optional(conditionKind, {
      description: 'rest (half an hour after any use) or full (end of a charge); rest when not said',
      phrase: text => (text === 'full' ? 'at the end of a charge' : 'at rest'),
    }),
    balance: optional(currentKind, {
      description: 'current of the balancer',
      phrase: text => `balanced with ${text}`,
    }),
  },
  examples: [
    'cells pack: 4S 1500 LiPo volts: 3.82 3.83 3.79 3.83 balance: 0.2A',
    'cells pack: 3S 720 LiHV volts: 4.35 4.34 4.31 when: full',
    'cells pack: 3S 850 LiPo volts: 3.81 0 7.64',
    'cells chemistry: LiPo volts: 3.82 3.83 3.79 3.83',
  ],
  plainWords: [
    'cell voltages',
    'cell volts',
    'my cells',
    'cells are',
    'cells read',
    'out of balance',
    'imbalance',
    'unbalanced',
  ],
  meantBy: [['cell volts'], ['cell volts', 'chemistry'], ['cell volts', 'cells'], ['cell volts', 'pack']],
  answer: ({ pack: named, chemistry: ofType, volts, when = 'rest', balance }, { show }) => {
    const pack = named ?? cellsOf(ofType, volts)
    const readings: CellReadings = {
      pack,
      cells_V: volts,
      at: when,
      balance_A: balance ?? usualBalance_A.value,
    }
    const check = checkCells(readings)
    const figure = figuresIn(show)
    const low_V = volts[check.lowest] as number
    const needsBalance = check.findings.some(
      finding =>
        finding.kind === 'spread' && finding.judged !== 'balanced' && finding.judged !== 'do not charge',
    )
    const isPlausible = check.findings.every(({ kind }) => plausible.has(kind))
    const isTimed = isPlausible && named !== undefined
    return {
      verdict: check.verdict,
      headline: [
        ...check.findings.map(finding => findingWords(finding, readings, check, show)),
        ...(needsBalance && isTimed ? [balanceWords(check, balance, show)] : []),
      ]
        .filter(Boolean)
        .join(' '),
      figures: [
        figure.perCell('spread', 'between highest and lowest', check.spread_V),
        figure.count('lowestCell', 'lowest cell', check.lowest + 1),
        figure.perCell('lowestPerCell', 'lowest reading', low_V),
        figure.count('highestCell', 'highest cell', check.highest + 1),
        figure.perCell('highestPerCell', 'highest reading', volts[check.highest] as number),
        figure.voltage(
          'packVoltage',
          'sum',
          volts.reduce((sum, cell_V) => sum + cell_V, 0),
        ),
        ...(isTimed ? [figure.duration('balanceTime', 'balancing takes at least', check.balance_s)] : []),
      ],
      working: [
        ...volts.map((cell_V, index) => `Cell ${index + 1}: ${show.number(cell_V, 3)} V.`),
        `Judged by: ${cite(spreads)}.`,
        ...(isTimed ? [balanceWorking(readings, check, show)] : []),
      ],
      cautions: careCautions('cells', {
        pack,
        ...(isPlausible && { restPerCell_V: low_V }),
        ...dangerOf(check),
      }),
      followUps:
        check.verdict === 'do not charge' || !named
          ? []
          : [followUp('What to set?', 'current', { pack: packKind.write(pack) })],
      assumed:
        balance === undefined && isTimed
          ? [`the balancer bleeds ${show.current(usualBalance_A.value)} (${cite(usualBalance_A)})`]
          : [],
    }
  },
})

/** As many cells as were read, where it is not said how many, at any capacity. Throws a Problem without a chemistry. */
function cellsOf(ofType: CellType | undefined, volts: readonly number[]): Pack {
  if (ofType) {
    const { chemistry, series = volts.length } = ofType
    return { chemistry, series, parallel: 1, capacity_Ah: 1 }
  }
  const read = cellVoltsKind.write(volts).replaceAll('V', '')
  throw new Problem({
    what: 'Which chemistry are these cells? The same volts are sound in one and a danger in another.',
    token: read,
    expected: `${anyChemistry} before the volts, or the pack`,
    example: `cells LiPo ${read}`,
  })
}

/** The readings are those of cells, and of these cells. */
const plausible: ReadonlySet<CellFinding['kind']> = new Set(['spread', 'low', 'other or empty', 'not full'])

function dangerOf({ findings }: CellCheck): { refusal?: 'damaged cell' | 'overcharged cell' } {
  if (findings.some(({ kind }) => kind === 'damaged')) return { refusal: 'damaged cell' }
  return findings.some(({ kind }) => kind === 'overcharged' || kind === 'chemistry')
    ? { refusal: 'overcharged cell' }
    : {}
}

function findingWords(
  finding: CellFinding,
  { pack, cells_V, at }: CellReadings,
  check: CellCheck,
  show: Show,
): string {
  const reading = (index: number) => show.perCell(cells_V[index] as number)
  const spread = `${show.number(check.spread_V * 1000, 0)} mV`
  switch (finding.kind) {
    case 'lead':
      return `Do not charge: no cell reads ${reading(finding.cell)}. The balance lead does not connect at cell ${finding.cell + 1}; mend the plug or the wire and measure again.`
    case 'count':
      return `Do not charge as ${pack.series}S: there are ${finding.readings} readings. Check the label, the balance plug and the cell count on the charger.`
    case 'damaged':
      return `Do not charge: cell ${finding.cell + 1} at ${reading(finding.cell)} is below the damage threshold of ${show.perCell(finding.damage_V)}. Retire the pack, and hand it in for recycling.`
    case 'chemistry':
      return `Do not charge: every cell is above ${show.perCell(finding.full_V)}, which is full for ${pack.chemistry.name}.${finding.looksLike ? ` These look like ${finding.looksLike.name} cells` : ' No cell of these kinds stands so high'}; check the label and the meter.`
    case 'overcharged':
      return `Do not charge: cell ${finding.cell + 1} at ${reading(finding.cell)} is above full, ${show.perCell(finding.full_V)}. Keep the pack outdoors and away from anything that burns; if a second meter agrees, hand it in.`
    case 'other or empty':
      return `Cells that all rest near ${show.perCell(finding.like.storage_V.value)} are ${finding.like.name}, or empty: make sure of the label before you charge them as ${pack.chemistry.name}.`
    case 'not full':
      return `The charge ended well below ${show.perCell(finding.full_V)}, which is full for ${pack.chemistry.name}: it was ended early, or the charger was set to another chemistry.`
    case 'low':
      return `Cell ${finding.cell + 1} at ${reading(finding.cell)} is below the floor of ${show.perCell(finding.floor_V)}: charge it gently, and watch it.`
    case 'spread':
      return spreadWords(finding.judged, spread, check, at, reading(check.lowest))
  }
}

function spreadWords(
  judged: Extract<CellFinding, { kind: 'spread' }>['judged'],
  spread: string,
  { lowest, findings }: CellCheck,
  at: CellReadings['at'],
  low: string,
): string {
  if (!findings.every(({ kind }) => plausible.has(kind))) return ''
  const cell = `cell ${lowest + 1} is lowest at ${low}`
  switch (judged) {
    case 'balanced':
      return `The cells are balanced, ${spread} apart.`
    case 'balance first':
      return at === 'full'
        ? `The cells ended ${spread} apart (${cell}): leave the pack on the balancer until they meet.`
        : `Balance first: the cells are ${spread} apart, ${cell}.`
    case 'weak cell':
      return `Watch this pack: the cells are ${spread} apart, ${cell}. Balance it, note the cells, and measure again after a day: a cell that falls behind again is weak.`
    case 'do not charge':
      return `Do not charge: the cells are ${spread} apart, ${cell}. Such a cell is hurt; retire the pack, or have it looked at by someone who knows.`
  }
}

const balanceWords = ({ balance_s }: CellCheck, balance_A: number | undefined, show: Show): string =>
  `Balancing takes at least ${show.duration(balance_s)} at ${show.current(balance_A ?? usualBalance_A.value)}.`

function balanceWorking({ pack, balance_A, cells_V }: CellReadings, check: CellCheck, show: Show): string {
  const { curve } = pack.chemistry
  const [high, low] = [cells_V[check.highest] as number, cells_V[check.lowest] as number]
  return `Balancing: the charge between ${show.number(high, 3)} V and ${show.number(low, 3)} V at rest (${cite(curve)}) is ${show.capacity((check.balance_s * balance_A) / 3600)}; ÷ ${show.current(balance_A)} = ${show.duration(check.balance_s)}, more where the balancer pauses. On the flat part of a curve millivolts hide much charge.`
}
