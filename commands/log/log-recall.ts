// What the logs of saved packs know better than their labels, for a question about charging them.

import { optional } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { ownersFor } from '../../src/assistant/kit/kit-names.ts'
import type { Recalled } from '../../src/assistant/lookup.ts'
import { isAlike, type Learned } from '../../src/charging/things/learned.ts'
import { learnedFrom } from '../../src/charging/upkeep/learned-once.ts'
import { judgeLog } from '../../src/charging/upkeep/pack-log.ts'
import { present } from '../../src/ground/present.ts'
import type { Text } from '../../src/ground/text.ts'
import type { KitEntry } from '../../src/memory/kit.ts'
import { learnedWords, oddWords, retireWords } from './learned.words.ts'
import { logOf } from './logged-pack.ts'
import { logsKind } from './logs-kind.ts'

type Texts = Readonly<Record<string, string>>

/** The option that tells by whose charges an answer goes; its words are `logWords`. */
export const byLog = { log: optional(logsKind) }

interface Known {
  readonly name: string
  readonly learned: Learned | undefined
  readonly assumed: readonly Text[]
}

/**
 * What was learned of the packs that the question names, unless it gives a capacity or a resistance itself. Of two packs
 * with one label nothing is taken: the question does not tell them apart.
 */
export async function recallFromLog(options: Texts, named: readonly KitEntry[], context: Context): Promise<Recalled> {
  const entries = options.log ? await entriesOf(options.log, context) : named
  const packs = entries.filter(({ kind }) => kind === 'pack')
  const known = await Promise.all(packs.map(entry => knownOf(entry, context)))
  const assumed = known.flatMap(one => one.assumed)
  const told = options.capacity || options.resistance ? [] : known.filter(({ learned }) => isOnly(learned, known))
  const learned = present(told.map(one => one.learned))
  if (learned.length === 0) return { options: {}, assumed }
  const byThese = present(told.map(one => one.learned && learnedWords(one.name, one.learned, context.locale)))
  return { options: { log: logsKind.write(told.map(({ name }) => name)) }, assumed: [...byThese, ...assumed], learned }
}

const isOnly = (learned: Learned | undefined, known: readonly Known[]): boolean =>
  learned !== undefined &&
  known.every(one => one.learned === learned || !one.learned || !isAlike(one.learned.pack, learned.pack))

/** Names that are gone, or another's, teach nothing. */
const entriesOf = (names: string, context: Context): Promise<readonly KitEntry[]> =>
  context.memory.kit.find(ownersFor(context), logsKind.read(names, {}).value)

async function knownOf(entry: KitEntry, { memory, locale }: Context): Promise<Known> {
  const { pack, charges } = await logOf(entry, memory)
  const learned = learnedFrom(pack, charges)
  const retire = judgeLog(pack, charges).condition === 'retire'
  return {
    name: entry.name,
    learned,
    assumed: present([
      learned && learned.odd.length > 0 ? oddWords(entry.name, charges, learned, locale) : undefined,
      retire ? retireWords(entry.name, locale) : undefined,
    ]),
  }
}
