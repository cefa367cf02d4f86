// How surely a text with values goes on from what was asked before: signs of that, weighed.

import { wordSet } from '../../../ground/word-set.ts'
import type { Candidate } from '../../candidates/index.ts'
import { clausesOf } from '../../model/clauses.ts'
import { conceptsOf } from '../../model/concepts.ts'
import type { Ranked } from '../../model/index.ts'
import { aside, fitRead, takes } from '../../reading/choose.ts'
import type { Fitted } from '../../reading/fit.ts'
import { namesPack } from '../../reading/told/told-pack.ts'
import { countOf, wordsBeside } from '../heard/words-beside.ts'
import type { Behind } from './behind.ts'

/** Words that go on from what was said before. */
export const goesOn =
  /^(?:and|or|but|plus|add|also|another|no+|nope|nah|not|so|ok(?:ay)?|then|what about|how about|what if|and what|same|instead|rather|with|(?:(?:can|could) (?:you|we|i) )?make (?:it|that)|now|if|it'?s|it is|they'?re|they are|that'?s|sorry|i meant|i mean|actually|wait|oh|hm+|only|just|why)\b/i

/** Words of these say what somebody wants to know. */
const wanted = wordSet(
  'amps cutoff long time done when storage many volts watts wh percent resistance plane lead why set',
)

const [few, many] = [5, 9]
export const isFewWords = (text: string): boolean => countOf(text) <= few

/** In halves, set by hand: tests/unit/language/follows.test.ts says how well they tell what follows from what begins anew. */
const weights = {
  always: -1,
  amend: 3.5,
  other: -3.5,
  goesOn: 2.5,
  few: 0.5,
  many: -1.5,
  asks: -1.5,
  tells: 1,
  wholePack: -2,
  taken: 2,
}

type Said = Pick<Behind, 'text' | 'values' | 'ranked' | 'vocabulary' | 'readBy'>
type Signs = Readonly<Record<keyof typeof weights, number>>

/** `fitted` is the text as a change of the last question. */
function signsOf(said: Said, fitted: Fitted): Signs {
  const { text, values, ranked } = said
  const scores = othersOf(ranked, fitted).map(one => one.share * takesAlone(one, said))
  const asks = namesWanted(text, values)
  return {
    always: 1,
    amend: ranked.find(({ intent }) => intent === 'amend')?.share ?? 0,
    other: Math.max(...scores),
    goesOn: Number(goesOn.test(text)),
    few: Number(isFewWords(text)),
    many: Number(countOf(text) > many),
    asks: Number(asks),
    tells: Number(!asks && clausesOf(text, values).every(clause => !clause.asks)),
    wholePack: Number(values.some(namesPack)),
    taken: values.length === 0 ? 0 : 1 - fitted.left.length / values.length,
  }
}

/** 0 to 1. What says what it wants to know goes on with another question, as surely as it is read as one. */
export function followsSurely(said: Said, fitted: Fitted): number {
  const { text, values, ranked } = said
  // Values alone say nothing of what is wanted.
  if (fitted.left.length === 0 && isOnlyValues(text, values)) return surely
  const signs = Object.entries(signsOf(said, fitted))
  const sum = signs.reduce((all, [name, sign]) => all + weights[name as keyof Signs] * sign, 0)
  const follows = 1 / (1 + Math.exp(-sum))
  return namesWanted(text, values) ? follows * (1 - (othersOf(ranked, fitted)[0]?.share ?? 0)) : follows
}

/** Values, and words that only join them. */
export const isOnlyValues = (text: string, values: readonly Candidate[]): boolean =>
  values.length > 0 && wordsBeside(text, values).every(word => joining.has(word))

/** Whether it names what somebody wants to know, beside its values. */
export const namesWanted = (text: string, values: readonly Candidate[]): boolean =>
  wordsBeside(text, values).some(word => conceptsOf(word).some(concept => wanted.has(concept)))

/** What else it may be, as if it could be no amendment. */
function othersOf(ranked: readonly Ranked[], { command }: Fitted): readonly Ranked[] {
  const own = ranked.filter(({ intent }) => intent !== 'amend')
  const whole = own.reduce((sum, { share }) => sum + share, 0) || 1
  return own
    .filter(({ intent }) => intent !== command)
    .slice(0, tried)
    .map(({ intent, share }) => ({ intent, share: share / whole }))
}

const joining = wordSet(
  'and or one ones at the an for with of on by to from then please pls instead rather now same too also it is its im are they was were actually sorry meant mean i no nope wait oh make only just',
)
const surely = 0.95
const tried = 4

const takesAlone = ({ intent }: Ranked, { readBy, vocabulary }: Said): number => {
  const command = aside.has(intent) ? undefined : vocabulary.find(({ name }) => name === intent)
  if (!command) return 1
  const read = readBy(command)
  return takes(command, fitRead(command, read), read.values)
}
