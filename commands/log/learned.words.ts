// What is said of what a pack's own charges have told.

import type { OptionWords } from '../../src/assistant/command.ts'
import { typicalTraits } from '../../src/charging/simulation/traits.ts'
import type { Learned } from '../../src/charging/things/learned.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import type { NotedCharge } from '../../src/memory/charge-log.ts'
import { dayWords } from './log.words.ts'

/** "4 charges". */
const chargesWords = ({ charges }: Learned, { say, show }: Locale): Text =>
  charges === 1 ? say`1 charge` : say`${show.number(charges, 0)} charges`

/** "from 4 charges of wren: it holds about 690 mAh". */
export function learnedWords(name: string, learned: Learned, locale: Locale): Text {
  const { say, show, own } = locale
  const held_Ah = typicalTraits(learned.traits).share * learned.pack.capacity_Ah
  return say`from ${chargesWords(learned, locale)} of ${own(name)}: it holds about ${show.charge(held_Ah)}`
}

/** What was left aside, and what that may be. */
export function oddWords(name: string, charges: readonly NotedCharge[], { odd }: Learned, locale: Locale): Text {
  const { say, own } = locale
  const days = odd.flatMap(index => charges[index] ?? []).map(({ at }) => dayWords(at, locale))
  return say`left aside of the log of ${own(name)}: ${joined(days, ', ')}, which does not go with the others; another pack, a charge that was stopped, or a slip of the pen?`
}

export const retireWords = (name: string, { say, own }: Locale): Text =>
  say`the log of ${own(name)} says to retire it: ${own(`"log show name: ${name}"`)} tells why`

export const logWords = ({ say }: Locale): { readonly log: OptionWords } => ({
  log: { about: say`saved packs whose noted charges are gone by`, as: text => say`by the log of ${text}` },
})
