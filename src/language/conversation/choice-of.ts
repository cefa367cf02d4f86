// A question that goes on from another, as one of those that may be meant.

import type { Choice } from '../reading/choose.ts'
import type { Fitted, Kept } from '../reading/fit.ts'

/** As sure as can be where no score says otherwise. */
export const choiceOf = (fitted: Fitted, kept: Kept): Choice => ({
  intent: fitted.command as Choice['intent'],
  fitted,
  score: 1,
  kept: Object.keys(kept).filter(name => fitted.options[name] === kept[name]),
})
