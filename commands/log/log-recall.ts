// What the log of a saved pack knows better than its label: its own capacity and resistance, for a question of time.

import type { Recalled } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { resistanceFactor } from '../../src/charging/simulation/resistance.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { judgeLog, type PackLog } from '../../src/charging/upkeep/pack-log.ts'
import { present } from '../../src/ground/present.ts'
import { attempt } from '../../src/ground/problem.ts'
import { capacityKind, packKind, resistanceKind, stateKind, temperatureKind } from '../../src/language/kinds/values.ts'
import type { KitEntry } from '../../src/memory/memory.ts'
import { logOf } from './logged-pack.ts'
import { recalledWords, retireWords } from './problems.words.ts'

type Texts = Readonly<Record<string, string>>

/** Capacity and resistance of the pack that was named, as options of the question, where it gives none itself. */
export async function recallFromLog(
  options: Texts,
  named: readonly KitEntry[],
  { memory, locale }: Context,
): Promise<Recalled> {
  const entry = named.find(({ kind, notation }) => kind === 'pack' && options.pack?.includes(notation))
  const pack = attempt(() => packKind.read(options.pack ?? '', {}).value)
  if (!entry || !pack) return { options: {}, assumed: [] }
  const { charges } = await logOf(entry, memory)
  const log = judgeLog(pack, charges)
  const known = { ...capacityFrom(log, options, pack), ...resistanceFrom(log, options, pack) }
  const told = {
    capacity_Ah: known.capacity === undefined ? undefined : capacityKind.read(known.capacity, {}).value,
    cell_ohm: known.resistance === undefined ? undefined : resistanceKind.read(known.resistance, {}).value,
  }
  const assumed = [
    recalledWords(entry.name, told, locale),
    log.condition === 'retire' ? retireWords(entry.name, locale) : undefined,
  ]
  return { options: known, assumed: present(assumed) }
}

/** So near must the readings put the capacity where the start is a percentage of it. */
const nearly = 0.06

/**
 * A capacity told by volts leans on the same curve as a start told by volts, and the errors cancel; beside a start in
 * percent it must be known by itself.
 */
function capacityFrom({ capacity }: PackLog, options: Texts, pack: Pack): { capacity?: string } {
  if (!capacity || options.capacity) return {}
  const { now_Ah, band_Ah } = capacity
  const start = options.from && attempt(() => stateKind.read(options.from ?? '', { pack }).value)
  const byVolts = !start || start.kind === 'rest'
  const isKnown = band_Ah.high <= now_Ah * (1 + nearly) && band_Ah.low >= now_Ah * (1 - nearly)
  return byVolts || isKnown ? { capacity: capacityKind.write(short(now_Ah)) } : {}
}

/** As it would be read at the temperature of the question. */
function resistanceFrom({ resistance }: PackLog, options: Texts, pack: Pack): { resistance?: string } {
  if (!resistance || options.resistance || pack.cellResistance_ohm !== undefined) return {}
  const { temperature = '25°C' } = options
  const temperature_C = attempt(() => temperatureKind.read(temperature, {}).value)
  if (temperature_C === undefined) return {}
  return { resistance: resistanceKind.write(short(resistance.now_ohm * resistanceFactor(temperature_C))) }
}

const short = (value: number): number => Number(value.toPrecision(3))
