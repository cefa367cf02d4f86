// A question that goes on from another, as one of those that may be meant.

import type { Candidate } from '../../candidates/index.ts'
import type { Choice } from '../../reading/choose.ts'
import { type Fitted, fitTo, type Kept } from '../../reading/fit.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'
import type { Lent } from './lend.ts'

/** The command asked of these values, with what an earlier question lends to it. */
export function choiceBy(command: CommandWords, values: readonly Candidate[], { kept, before }: Lent): Choice {
  return choiceOf(fitTo(command, values, kept, before), kept)
}

/** As sure as can be where no score says otherwise. */
export const choiceOf = (fitted: Fitted, kept: Kept): Choice => ({
  intent: fitted.command as Choice['intent'],
  fitted,
  score: 1,
  kept: Object.keys(kept).filter(name => fitted.options[name] === kept[name]),
})
