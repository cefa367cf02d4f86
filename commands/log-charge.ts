// Notes a charge of a saved pack: what was put back, and what else is known of it.

import { randomUUID } from 'node:crypto'
import { defineCommand, type Inputs, optional, required } from '../src/assistant/command.ts'
import { packNameKind } from '../src/assistant/kit-name.ts'
import { Problem } from '../src/assistant/problem.ts'
import type { FollowUp } from '../src/assistant/reply.ts'
import type { Show } from '../src/assistant/show.ts'
import {
  capacityKind,
  durationKind,
  packKind,
  stateKind,
  targetKind,
  temperatureKind,
} from '../src/assistant/values.ts'
import { careCautions } from '../src/cautions/pack-care.ts'
import { checkCells } from '../src/charging/cell-check.ts'
import type { State, Target } from '../src/charging/charge.ts'
import { chemistries } from '../src/charging/chemistries.ts'
import { whyUnfit } from '../src/charging/fitness.ts'
import type { Pack } from '../src/charging/pack.ts'
import {
  type ChargeNote,
  capacityReading,
  endsFull,
  leastShare,
  resistanceReading,
} from '../src/charging/pack-log.ts'
import { figuresIn } from './parts/figure.ts'
import { followUp } from './parts/follow-up.ts'
import { levelsOf } from './parts/levels.ts'
import { capacityWords } from './parts/log-words.ts'
import { loggedPack } from './parts/logged-pack.ts'
import { cellResistancesKind, cellVoltsKind } from './parts/reading-kinds.ts'
import { refusedAnswer } from './parts/refused.ts'
import { cite } from './parts/working.ts'

/** Years of flying; older ones say nothing of the pack's age now. */
const mostNoted = 500
/** No sound pack takes back so much more than its label: it is a slip of the pen, or something is badly wrong. */
const mostOverLabel = 1.25

const options = {
  name: required(packNameKind, { description: 'of the saved pack', phrase: text => text }),
  'put-back': required(capacityKind, {
    description: 'what the charger counted into the pack',
    phrase: text => `took back ${text}`,
  }),
  from: optional(stateKind, {
    description: 'volts per cell at rest before it; empty after a full discharge',
  }),
  to: optional(targetKind, { description: 'where the charge ended; full when not said' }),
  took: optional(durationKind, { description: 'how long it took', phrase: text => `in ${text}` }),
  cells: optional(cellVoltsKind, {
    description: 'volts of each cell at its end',
    phrase: text => `cells at its end ${text}`,
  }),
  resistance: optional(cellResistancesKind, {
    description: 'of one cell, or one for each cell',
    phrase: text => `cells of ${text}`,
  }),
  temperature: optional(temperatureKind, {
    description: 'of the cells when the resistance was read; 25 °C when not said',
    phrase: text => `at ${text}`,
  }),
  counted: optional(capacityKind, {
    description: 'what the flight controller had counted as used, from full',
    phrase: text => `counted in flight ${text}`,
  }),
}

type Asked = Inputs<typeof options>

export const logCharge = defineCommand({
  name: 'log charge',
  summary: 'Notes a charge of a saved pack, to follow its capacity and resistance.',
  options,
  examples: [
    'log charge name: wren put-back: 640mAh from: 3.6V took: 50min',
    'log charge name: wren put-back: 690mAh from: empty resistance: 12 13 12 mΩ temperature: 20°C',
    'log charge name: wren put-back: 610mAh counted: 560mAh cells: 4.35 4.34 4.35',
  ],
  changes: true,
  notStanding: true,
  answer: async (inputs, context) => {
    const { house, show, memory, now } = context
    if (!now) throw noClock
    const { name, took } = inputs
    const charge_Ah = inputs['put-back']
    const { entry, pack } = await loggedPack(name, context)
    const { target, restPerCell_V, from } = levelsOf(pack, house, inputs.from, inputs.to)
    const known = { pack, ...(restPerCell_V !== undefined && { restPerCell_V }) }
    const unfit = whyUnfit(known)
    if (unfit) return refusedAnswer(unfit, known, show)
    refuseSlips(inputs, pack, show)
    const note: ChargeNote = {
      charge_Ah,
      ...(inputs.from && { from }),
      to: endOf(target),
      ...(inputs.cells && { cells_V: inputs.cells }),
      ...(inputs.resistance && { cells_ohm: inputs.resistance }),
      ...(inputs.temperature !== undefined && { temperature_C: inputs.temperature }),
    }
    await memory.log.add(
      {
        ...note,
        id: randomUUID(),
        owner: entry.owner,
        name,
        notation: entry.notation,
        at: now,
        ...(took !== undefined && { duration_s: took }),
        ...(inputs.counted !== undefined && { counted_Ah: inputs.counted }),
      },
      mostNoted,
    )

    const figure = figuresIn(show)
    const capacity = capacityReading(pack, note)
    const at25C_ohm = resistanceReading(note)
    const mean_A = took === undefined ? undefined : (charge_Ah * 3600) / took
    const at = endsFull(pack, note.to) ? 'full' : 'rest'
    const check = inputs.cells && checkCells({ pack, cells_V: inputs.cells, at, balance_A: 1 })
    return {
      ...(check && { verdict: check.verdict }),
      headline: [
        `Noted: ${name} took back ${show.capacity(charge_Ah)}.`,
        capacity ? `By that it holds about ${capacityWords(capacity, show)}.` : '',
        check && check.verdict !== 'go' ? 'Its cells call for a look before it flies again.' : '',
      ]
        .filter(Boolean)
        .join(' '),
      figures: [
        figure.capacity('chargeIn', 'put back', charge_Ah),
        ...(capacity
          ? [figure.capacity('capacity', 'capacity by this charge', capacity.capacity_Ah, capacity.band_Ah)]
          : []),
        ...(mean_A === undefined
          ? []
          : [
              figure.current('meanCurrent', 'current on average', mean_A),
              figure.rate('meanRate', 'rate on average', mean_A / pack.capacity_Ah),
            ]),
        ...(at25C_ohm === undefined
          ? []
          : [figure.resistance('cellResistance25C', 'a cell at 25 °C', at25C_ohm)]),
      ],
      working: [capacityWorking(note, pack, show)],
      cautions: careCautions('health', {
        ...known,
        ...(mean_A !== undefined && { current_A: mean_A, highest_A: highest_A(pack) }),
      }),
      followUps: followUps(inputs, pack, at),
    }
  },
})

const noClock = new Problem({
  what: 'I know no clock here, so I cannot note when this was.',
  expected: 'a chat where I know the time',
  example: 'log show name: wren',
})

const endOf = (target: Target): State =>
  target.kind === 'soc' ? target : { kind: 'rest', perCell_V: target.perCell_V }

const highest_A = ({ labelRate_C, chemistry, capacity_Ah }: Pack): number =>
  (labelRate_C ?? chemistries[chemistry].highestRate_C.value) * capacity_Ah

/** Throws a Problem for values that this pack cannot have. */
function refuseSlips(inputs: Asked, pack: Pack, show: Show): void {
  const put_Ah = inputs['put-back']
  const most_Ah = mostOverLabel * pack.capacity_Ah
  if (put_Ah > most_Ah) {
    throw new Problem({
      what: `More than ${show.capacity(most_Ah)} does not go into a sound pack of ${show.capacity(pack.capacity_Ah)}. If the charger did count that, do not charge the pack again before you know why.`,
      token: capacityKind.write(put_Ah),
      expected: `at most ${show.capacity(most_Ah)} for ${packKind.write(pack)}`,
      example: `put-back: ${capacityKind.write(pack.capacity_Ah)}`,
    })
  }
  if (
    inputs.counted !== undefined &&
    inputs.to &&
    !(inputs.to.kind === 'named' && inputs.to.name === 'full')
  ) {
    throw new Problem({
      what: 'Only a charge to full puts back what was counted in a flight from full.',
      token: targetKind.write(inputs.to),
      expected: 'to: full, or no "counted"',
      example: 'log charge name: wren put-back: 610mAh counted: 560mAh',
    })
  }
  for (const [option, values] of [
    ['cells', inputs.cells],
    ['resistance', inputs.resistance],
  ] as const) {
    if (!values || values.length === pack.series || (option === 'resistance' && values.length === 1)) continue
    throw new Problem({
      what: `There are ${values.length} values for ${pack.series} cells.`,
      token: option,
      expected: `${pack.series} values${option === 'resistance' ? ', or one for all' : ''}`,
      example: option === 'cells' ? 'cells: 4.35 4.34 4.35' : 'resistance: 12mΩ',
    })
  }
}

function capacityWorking(note: ChargeNote, pack: Pack, show: Show): string {
  const capacity = capacityReading(pack, note)
  if (capacity) {
    return `Capacity: ${show.capacity(note.charge_Ah)} ÷ ${show.percent(capacity.share)} moved = ${show.capacity(capacity.capacity_Ah)} (voltage curve: ${cite(chemistries[pack.chemistry].curve)}); the range spans published cells of the kind. A full cycle, noted with "from: empty", tells it best.`
  }
  return note.from
    ? `It moved too little to tell the capacity (${cite(leastShare)}).`
    : 'Without "from", the volts per cell at rest before the charge, it tells nothing of the capacity.'
}

function followUps({ name, cells, counted }: Asked, pack: Pack, when: 'full' | 'rest'): FollowUp[] {
  return [
    followUp('Its log', 'log show', { name }),
    ...(cells
      ? [
          followUp('Judge its cells', 'cells', {
            pack: packKind.write(pack),
            volts: cellVoltsKind.write(cells),
            when,
          }),
        ]
      : []),
    ...(counted === undefined ? [] : [followUp('Correct the current meter', 'log meter', { name })]),
    followUp('Take it back', 'log undo', { name }),
  ]
}
