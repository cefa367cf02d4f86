// A pack that is saved by name, with the charges noted of it.

import type { Context } from '../../src/assistant/context.ts'
import { ownersFor } from '../../src/assistant/kit/kit-names.ts'
import { isAlike } from '../../src/charging/things/learned.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import type { NotedCharge } from '../../src/memory/charge-log.ts'
import type { KitEntry } from '../../src/memory/kit.ts'
import type { Memory } from '../../src/memory/memory.ts'
import { noLogOf } from './problems.words.ts'

export interface LoggedPack {
  readonly entry: KitEntry
  readonly pack: Pack
  /** In order of time; without those of another pack that bore the name before. */
  readonly charges: readonly NotedCharge[]
}

/** The asker's own pack of that name, else the club's. Throws a Problem where there is none. */
export async function loggedPack(name: string, context: Context): Promise<LoggedPack> {
  const [entry] = await context.memory.kit.find(ownersFor(context), [name])
  if (entry?.kind === 'pack') return logOf(entry, context.memory)
  throw noLogOf(name, entry?.kind)
}

export async function logOf(entry: KitEntry, { log }: Memory): Promise<LoggedPack> {
  const pack = packOf(entry)
  const charges = await log.of(entry.owner, entry.name)
  const notations = [...new Set(charges.map(({ notation }) => notation))]
  const own = new Set(notations.filter(notation => isAlike(packOf({ notation }), pack)))
  return { entry, pack, charges: charges.filter(({ notation }) => own.has(notation)) }
}

const packOf = ({ notation }: Pick<KitEntry, 'notation'>): Pack => packKind.read(notation, {}).value
