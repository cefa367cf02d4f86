// Notes a charge of a saved pack: what was put back, and what else is known of it.

import { randomUUID } from 'node:crypto'
import { defineCommand } from '../../src/assistant/old-command.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import { careCautions } from '../../src/cautions/pack-care.ts'
import { judge, type Verdict } from '../../src/charging/envelope/judge.ts'
import { adviseSetting } from '../../src/charging/setting/old-setting.ts'
import { situationOf } from '../../src/charging/situation/situation.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { State, Target } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { readingFault } from '../../src/charging/upkeep/cell-spread.ts'
import {
  type ChargeNote,
  capacityReading,
  endsFull,
  leastShare,
  resistanceReading,
} from '../../src/charging/upkeep/charge-note.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { cellVoltsKind } from '../care/reading-kinds.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { levelsOf } from '../shared/levels.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { cite } from '../shared/working.ts'
import { type NoteAsked, noteOptions, refuseSlips } from './charge-note-options.ts'
import { capacityWords } from './log-words.ts'
import { loggedPack } from './logged-pack.ts'

/** Years of flying; older ones say nothing of the pack's age now. */
const mostNoted = 500
export const logCharge = defineCommand({
  name: 'log charge',
  summary: 'Notes a charge of a saved pack, to follow its capacity and resistance.',
  options: noteOptions,
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
    const known = { pack, restPerCell_V }
    // The house's own limits are about charges to come.
    const setting = adviseSetting({ ...known, target })
    if ('refusal' in setting) return refusedAnswer(setting, known, show)
    refuseSlips(inputs, pack, show)
    const note: ChargeNote = {
      charge_Ah,
      ...(inputs.from && { from }),
      to: endOf(target),
      cells_V: inputs.cells,
      cells_ohm: inputs.resistance,
      temperature_C: inputs.temperature,
    }
    await memory.log.add(
      {
        ...note,
        id: randomUUID(),
        owner: entry.owner,
        name,
        notation: entry.notation,
        at: now,
        duration_s: took,
        counted_Ah: inputs.counted,
      },
      mostNoted,
    )

    const figure = figuresIn(show)
    const capacity = capacityReading(pack, note)
    const at25C_ohm = resistanceReading(note)
    const mean_A = took === undefined ? undefined : (charge_Ah * 3600) / took
    const at = endsFull(pack, note.to) ? 'full' : 'rest'
    const verdict = inputs.cells && cellsVerdict(pack, inputs.cells, at, house)
    return {
      verdict,
      headline: [
        `Noted: ${name} took back ${show.capacity(charge_Ah)}.`,
        capacity ? `By that it holds about ${capacityWords(capacity, show)}.` : '',
        verdict && verdict !== 'go' ? 'Its cells call for a look before it flies again.' : '',
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

function cellsVerdict(
  pack: Pack,
  cells_V: readonly number[],
  when: 'rest' | 'full',
  house: HouseLimits,
): Verdict {
  if (readingFault(pack, cells_V)) return 'do not charge'
  const around = { house, dangers: [], doubts: [] }
  return judge(situationOf({ act: 'look', pack, cells_V, when }, around)).verdict
}

const endOf = (target: Target): State =>
  target.kind === 'soc' ? target : { kind: 'rest', perCell_V: target.perCell_V }

const highest_A = ({ labelRate_C, chemistry, capacity_Ah }: Pack): number =>
  (labelRate_C ?? chemistry.highestRate_C.value) * capacity_Ah

function capacityWorking(note: ChargeNote, pack: Pack, show: Show): string {
  const capacity = capacityReading(pack, note)
  if (capacity) {
    return `Capacity: ${show.capacity(note.charge_Ah)} ÷ ${show.percent(capacity.share)} moved = ${show.capacity(capacity.capacity_Ah)} (voltage curve: ${cite(pack.chemistry.curve)}); the range spans published cells of the kind. A full cycle, noted with "from: empty", tells it best.`
  }
  return note.from
    ? `It moved too little to tell the capacity (${cite(leastShare)}).`
    : 'Without "from", the volts per cell at rest before the charge, it tells nothing of the capacity.'
}

function followUps({ name, cells, counted }: NoteAsked, pack: Pack, when: 'full' | 'rest'): FollowUp[] {
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
