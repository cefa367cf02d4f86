// What a club tells of itself, put where an answer needs it: whom to call and where one is, and where a battery goes.

import type { RuleKey } from '../../charging/envelope/judge.ts'
import { emergencies } from '../../charging/situation/dangers.ts'
import { joined } from '../../ground/text.ts'
import type { HouseRules } from '../../memory/memory.ts'
import { inLines, type Reply } from '../reply.ts'
import { callWords, handInWords } from './club-facts.words.ts'

/** Of these the pack is handed in, or may have to be. */
const handedIn: readonly RuleKey[] = [
  'swollen',
  'pierced',
  'wet',
  'homework',
  'bypass',
  'revive',
  'folkRemedy',
  'unknownPack',
  'disposal',
  'deadCell',
  'overCharged',
  'wornOut',
]

/** The first thing in an emergency, after getting away from it; after all else where something is to be handed in. */
export function withClubFacts(reply: Reply, rules: HouseRules | undefined): Reply {
  const { reasons = [], locale, lines, cautions } = reply
  const is = (keys: readonly RuleKey[]) => reasons.some(key => keys.includes(key))
  if (!rules || reasons.length === 0) return reply
  if (is(emergencies)) {
    const call = callWords(rules, locale)
    return call ? { ...reply, ...inLines([joined([lines[0], call]), ...lines.slice(1)]) } : reply
  }
  const where = is(handedIn) ? handInWords(rules, locale) : undefined
  if (!where) return reply
  return { ...reply, cautions: [...cautions, { key: 'collectionPoint', text: where, must: true }] as never }
}
