// The word that says what a value is for: the preposition or verb before it.

import { wordSet } from '../../ground/word-set.ts'
import type { ValueName } from './sentence/candidate.ts'
import type { Sentence } from './sentence/sentence.ts'

const cues = wordSet(
  "used from to at on go by with in for until till til off using via of is are was were be reads read reading shows showing says said say set sets charge charging charged discharge put puts sits rests stands stays stay landed through up down after since per than into before within takes took flew flown needs need limit label max min around about like it's its @ = between and or vs against over under without during leave leaving keep keeping",
)
const fillers = wordSet(
  'a an the my our his her your this that these those some about around roughly approx approximately nearly almost only just now maybe say like ca circa ~ exactly still currently already another new old small big second first each all both other same ( " \' , :',
)
const same: ReadonlyMap<string, string> = new Map([
  ['@', 'at'],
  ['go', 'to'],
  ['=', 'is'],
  ["it's", 'is'],
  ['til', 'until'],
])
const insteadOf: ReadonlyMap<string, string> = new Map([
  ['of', 'instead'],
  ['than', 'rather'],
])
/** "Cutoff", "cut-off", "cut off volts": of a charge, not of a motor or a source. */
function isCutoff(sentence: Sentence, at: number): boolean {
  const off = /^(?:volts|voltage)$/.test(sentence.word(at)) ? at - 1 : at
  const cut = sentence.word(off - 1) === '-' ? off - 2 : off - 1
  const isSaid = cutoffs.has(sentence.word(off)) || (sentence.word(off) === 'off' && sentence.word(cut) === 'cut')
  return isSaid && !sentence.mentions(drained)
}
const cutoffs = wordSet('cutoff cutoffs termination')
/** "It stops at C/20", "cuts off at 50 mA": a flight ends so too, but at no amps. */
const isEnded = (sentence: Sentence, at: number): boolean =>
  sentence.word(at) === 'at' &&
  (ended.test(sentence.word(at - 1)) || /^(?:cuts?|switch(?:es)?) off$/.test(sentence.typed(at - 2, at)))
const ended = /^(?:stops|ends|terminat\p{L}*|finishes)$/u
const isOfAmps = (kind: ValueName | undefined): boolean => kind === 'current' || kind === 'rate'
/** "Balancer 200 mA", "balances with 0.2 A". */
const isBalancer = (sentence: Sentence, at: number): boolean =>
  balancer.test(sentence.word(joins.test(sentence.word(at)) || sentence.word(at) === 'with' ? at - 1 : at))
const balancer = /^balanc(?:e|er|es|ing)$/
const joins = /^(?:is|was|at|of|to|=)$/
const drained = wordSet('esc motor flight flying lvc low discharge drain source lead alarm inverter')
const ends = wordSet('stop stopping end ending finish finishing')
const mostFillers = 4

/** Undefined where none stands there, but for articles and the like. */
export function cueBefore(sentence: Sentence, first: number, kind?: ValueName): string | undefined {
  for (let at = first - 1; at >= 0 && at > first - 2 - mostFillers; at -= 1) {
    const word = sentence.word(at)
    if (fillers.has(word)) continue
    // "Stop at 4.1", "cutoff 4.35": where it is to end.
    if (word === 'at' && ends.has(sentence.word(at - 1))) return 'until'
    if (isOfAmps(kind) && isEnded(sentence, at)) return 'until'
    if (kind === 'current' && isBalancer(sentence, at)) return 'balance'
    if (isCutoff(sentence, at) || (joins.test(word) && isCutoff(sentence, at - 1))) return 'until'
    // "It is down to 3.8", "flown to 3.5": where it stands, unless it is brought there.
    const verb = sentence.word(at - 1)
    const isDone = /^(?:discharged|drained)$/.test(verb) && !/^(?:be|being|get|have)$/.test(sentence.word(at - 2))
    const isDown = verb === 'down' ? !isBrought(sentence, at) : isDone || fell.has(verb)
    if (word === 'to' && isDown) return 'down'
    if (word === 'between') return 'from'
    if (word === 'and' && isRange(sentence, at)) return 'to'
    if (insteadOf.get(word) === sentence.word(at - 1)) return 'instead'
    return cues.has(word) ? (same.get(word) ?? word) : undefined
  }
  return undefined
}

/** "Between 3.75 and 3.85". */
const isRange = (sentence: Sentence, and: number): boolean =>
  [2, 3, 4, 5].some(back => sentence.word(and - back) === 'between') && sentence.numerals[and + 1] !== undefined
const fell = wordSet('flown flew dropped fell ran sank')
/** "Drained down to 3.7" is over. */
const bringing =
  /^(?!\p{L}+[^e]ed$)(?:drain|discharg|bring|brought|tak|get|go|put|empty|run|pull|charg|burn|stor|how|want|need)/u
const farthest = 10
const isBrought = (sentence: Sentence, at: number): boolean =>
  Array.from({ length: farthest }, (_, back) => sentence.word(at - 2 - back)).some(word => bringing.test(word))
