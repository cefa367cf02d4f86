// Another quantity of what was asked, where the answer before names it already: "how long" behind a plan, "amps" behind a board.

import { conceptsOf } from '../../model/concepts.ts'
import { wordsOf } from '../../model/words.ts'
import { fitTo } from '../../reading/fit.ts'
import { namesPack } from '../../reading/told/told-pack.ts'
import { asBefore } from '../behind/as-before.ts'
import type { Way } from '../behind/behind.ts'
import { choiceOf } from '../behind/choice-of.ts'
import { isFewWords } from '../behind/follow-up.ts'
import { isOfPack } from '../behind/lend.ts'
import { countOf } from '../heard/words-beside.ts'
import { changed } from './change.ts'

const units: Readonly<Record<string, string>> = {
  long: 's',
  time: 's',
  done: 's',
  when: 's',
  amps: 'A',
  watts: 'W',
  wh: 'Wh',
  volts: 'V',
  percent: '%',
}

/** "Which one is it" of those whose readings were told. */
const standsOut =
  /^\W*(?:(?:and|so|but|ok|then) )*(?:which|what|who)(?:'?s)?\b(?: \w+){0,3} (?:is|has|was|bad|weak|low|off|out)\b/i

/** How much goes into a pack or out of it. */
export const goesIn =
  /\b(?:how (?:much|many)\b.*|what )\b(?:goes?|going|put|takes?|comes?|get) (?:\w+ )?(?:in|into|out|back)\b|\bto (?:dis)?charge\b/i

/** What answers tell beside their figures: that, and when all are done. */
const asked: Readonly<Record<string, RegExp>> = Object.fromEntries([
  ...['current', 'time', 'storage', 'percent', 'parallel'].map(command => [command, goesIn]),
  ['plan', /^\W*(?:(?:and|so|ok|but) )*(?:when|(?:at )?what time)\b|\bwhich\b.*\bfirst\b|\bwhat order\b/i],
  ...['cells', 'health', 'parallel'].map(command => [command, standsOut]),
])

const ofAll = /\b(?:all|both|lot|total|altogether|together|whole|every(?:thing|one))\b/i
const many = 9

/** Their answers tell of all that hangs together; one pack alone is asked about anew. */
const ofMany: ReadonlySet<string> = new Set(['plan', 'parallel', 'source', 'lend', 'storage', 'trim'])

/**
 * The question before, asked again, where few words ask for a quantity that its answer names and `other`, which they
 * are read as, would lose some of its details.
 */
export const stays: Way = ({ text, values, other, frame }, command) => {
  const { question, figures = [], pending } = frame
  const again = () => choiceOf(fitTo(command, [], question.options), question.options)
  if (pending) return undefined
  // "Which one" counts nothing.
  if (isOfPack(values) && asked[command.name]?.test(text)) return again()
  const isShort = isFewWords(text) || (ofAll.test(text) && countOf(text) <= many)
  const mayBe = values.length === 0 ? isShort : !values.some(namesPack)
  if (!ofMany.has(command.name) || !other?.fitted || !mayBe) return undefined
  const wanted = new Set(
    wordsOf(text).flatMap(word => (word === 'a' ? [] : conceptsOf(word).map(concept => units[concept]))),
  )
  // Of a discharge it is known once it is told where the pack stands; what is stored goes to a level that no detail tells.
  const isStored = command.name === 'storage'
  const isNamed = figures.some(({ unit }) => wanted.has(unit)) || (isStored && wanted.has('s'))
  const held = new Set(Object.values(other.fitted.options))
  const isLost =
    other.intent !== command.name &&
    (isStored || ofAll.test(text) || Object.values(question.options).some(told => !held.has(told)))
  if (!isNamed || !isLost) return undefined
  if (values.length === 0) return again()
  const change = changed(command, { values: asBefore(text, values, command, frame), free: {} }, frame)
  return change?.fitted.left.length === 0 ? choiceOf(change.fitted, change.kept) : undefined
}
