// Notes a charge of a saved pack: what was put back, and what else is known of it.

import { randomUUID } from 'node:crypto'
import { session } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { capacityReading, endsFull, resistanceReading } from '../../src/charging/upkeep/charge-note.ts'
import { learnedFrom } from '../../src/charging/upkeep/learned-once.ts'
import { chargeShown, meanCurrent_A } from '../../src/charging/upkeep/log-shown.ts'
import { isEmptied } from './before-kind.ts'
import { noteOf, noteTakes } from './charge-note.ts'
import { refuseSlips } from './charge-slips.ts'
import { loggedPack } from './logged-pack.ts'
import { noClock } from './problems.words.ts'

/** Years of flying; older ones say nothing of the pack's age now. */
export const mostNoted = 500

export const logCharge = session({
  name: 'log charge',
  takes: noteTakes,
  examples: [
    'log charge name: wren put-back: 640mAh from: 3.6V took: 50min',
    'log charge name: wren put-back: 690mAh from: empty resistance: 12 13 12 mΩ temperature: 20°C',
    'log charge name: wren put-back: 610mAh counted: 560mAh cells: 4.35 4.34 4.35',
    'log charge name: wren current: 0.72A from: 3.70V to: 4.35V until: 0.07A put-back: 610mAh took: 62min to-cutoff: 47min',
  ],
  changes: true,
  notStanding: true,
  /** Where it stood, but where it was emptied to measure it, and where it stands now. */
  situations: async ({ name, from, to, temperature }, context) => {
    const { pack } = await loggedPack(name, context)
    const stood = from && isEmptied(from) ? undefined : from
    return [{ act: 'look', pack, from: stood, to, temperature_C: temperature }]
  },
  compute: async ([permit], asked, context) => {
    const { house, memory, now } = context
    if (!now) throw noClock
    const { entry, pack, charges } = await loggedPack(asked.name, context)
    refuseSlips(asked, pack, house)
    const note = noteOf(asked, pack, house)
    const { owner, name, notation } = entry
    await memory.log.add(
      { ...note, counted_Ah: asked.counted, id: randomUUID(), owner, name, notation, at: now },
      mostNoted,
    )
    const learned = learnedFrom(pack, [...charges, note])
    return {
      permit,
      pack,
      note,
      learned,
      isOdd: learned?.odd.includes(charges.length) ?? false,
      took_s: asked.took,
      when: endsFull(pack, note.to) ? ('full' as const) : ('rest' as const),
      capacity: capacityReading(pack, note),
    }
  },
  deeds: ({ permit, pack, note, took_s }) => (permit ? [{ ...chargeShown(pack, note, took_s), permit }] : []),
  figures: ({ pack, note, took_s, capacity }) => {
    const mean_A = took_s === undefined ? undefined : meanCurrent_A(note.charge_Ah, took_s)
    const at25C_ohm = resistanceReading(note)
    return [
      figure.capacity('chargeIn', note.charge_Ah),
      figure.capacity('capacity', capacity?.capacity_Ah, capacity?.band_Ah),
      figure.current('meanCurrent', mean_A),
      figure.rate('meanRate', mean_A && mean_A / pack.capacity_Ah),
      figure.resistance('cellResistance25C', at25C_ohm),
    ]
  },
})
