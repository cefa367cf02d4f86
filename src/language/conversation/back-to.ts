// "Back to the receiver pack: where does it stop", "now the 4S again": an earlier question of the same conversation.

import { wordSet } from '../../ground/word-set.ts'
import { bestCover, type Candidate, candidatesOf } from '../candidates/index.ts'
import type { Frame } from '../frames/frame.ts'
import { type PackTold, toldBy, toldIn } from '../reading/told/told-pack.ts'
import { wordsBeside } from './heard/words-beside.ts'

interface Earlier {
  readonly frame: Frame
  /** What is asked of it. */
  readonly text: string
}

const back =
  /\b(?:back (?:to|on)|return(?:ing)? to)\s+(?:the |my |that |our )?([^,:;.?!]{2,40})([,:;.?!]\s*)?|\b(?:the |my )([\w\s]{2,20}) again\b/i
const parts = ['series', 'capacity_Ah', 'chemistry'] as const satisfies readonly (keyof PackTold)[]
/** They tell packs apart no more than "it" does. */
const ofAny = wordSet('pack packs battery batteries one ones first other the my that')

/** The question that a text goes back to, by the pack that it names in part or by a word that it was asked in. */
export function backTo(text: string, last: Frame | undefined): Earlier | undefined {
  const [whole = '', before, ends, again] = back.exec(text) ?? []
  const thing = before ?? again
  if (!thing || !last) return undefined
  const values = bestCover(candidatesOf(thing))
  const words = wordsBeside(thing, values).filter(word => !ofAny.has(word))
  for (let frame: Frame | undefined = last; frame; frame = frame.before)
    if (!frame.pending && isOf(frame, values, words))
      return { frame, text: ends === undefined ? text : text.replace(whole, '').trim() || text }
  return undefined
}

function isOf({ question, typed = '' }: Frame, values: readonly Candidate[], words: readonly string[]): boolean {
  const pack = toldIn(question.options.pack ?? '')
  const told = values.flatMap(value => toldBy(value) ?? [])
  if (!pack) return false
  if (told.length > 0)
    return told.every(one => parts.every(part => one[part] === undefined || one[part] === pack[part]))
  const asked = new Set(wordsBeside(typed, []))
  return words.some(word => asked.has(word))
}
