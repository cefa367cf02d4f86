// A figure that is asked for beside words of the handbook: "what does C mean, and what is 1C for my 3S 1500".

import { attempt } from '../../ground/problem.ts'
import { bestCover, candidatesOf } from '../candidates/index.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import { intentsOf } from '../model/index.ts'
import { readTyped } from '../sentence/typed.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import type { Said } from './choose.ts'
import { type Fitted, fitTo } from './fit.ts'

/** Less likely than this, a part of a sentence asks for no figure. */
const surely = 0.5

/** A sentence ends, or another question begins. */
const borders = /(?<=[?])\s+|[.!;:,]+\s+|\s+(?:and|but|-)\s+/
const asks =
  /\?|\b(?:what|whats|which|how|when|tell|give)\b|^\W*(?:so |then )?(?:can|could|may|is|are|do|does|did|will|would|should)\b/i
/** A figure of that very pack: "what does it come to for my 4S". */
const asksFigure = /\b(?:what|whats|which|how)\b/i
const asksMeaning = /\bmeans?\b(?! (?:for|to)\b)/i
const ofThePack = /\b(?:for|of|on|with) (?:(?:my|our|his|her|the|this|that|a|an|one) )?$/i

/**
 * What works it out; undefined where words alone are asked for. `related` is a question in notation that works out what
 * the handbook says on it.
 */
export function figureBeside({ text, vocabulary, readBy }: Said, related: string | undefined): Fitted | undefined {
  const typed = related === undefined ? undefined : attempt(() => readTyped(related, vocabulary))
  for (const part of text.split(borders)) {
    const pack = bestCover(candidatesOf(part)).find(value => value.pack?.series ?? value.pack?.capacity_Ah)
    if (!pack || !asks.test(part)) continue
    const whole = (command: CommandWords | undefined, needs: readonly string[]): Fitted | undefined => {
      if (!command || command.changes || command.options.length === 0) return undefined
      const fitted = fitTo(command, readBy(command).values)
      const isTaken = ({ text, typed }: Candidate) =>
        !part.includes(typed) || Object.values(fitted.options).includes(text)
      const isWhole = fitted.missing === undefined && fitted.left.every(isTaken)
      return isWhole && needs.every(name => fitted.options[name] !== undefined) ? fitted : undefined
    }
    const [likeliest] = intentsOf(part)
    const isSure = part !== text && likeliest !== undefined && likeliest.share >= surely
    const own = isSure
      ? whole(
          vocabulary.find(({ name }) => name === likeliest.intent),
          [],
        )
      : undefined
    const isOfPack = asksFigure.test(part) && !asksMeaning.test(part) && ofThePack.test(part.slice(0, pack.start))
    const found = own ?? (typed && isOfPack ? whole(typed.command, Object.keys(typed.question.options)) : undefined)
    if (found) return found
  }
  return undefined
}
