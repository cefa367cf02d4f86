// What was refused, said once more.

import { entryOn } from '../../handbook/asked.ts'
import { withEntry, withLine } from '../layers/other-lines.ts'
import type { Reply } from '../reply.ts'
import { asksWhatNow } from './of-before.ts'
import { ofDangers, type Said } from './said.ts'

/** To whoever pleads, or asks what now. */
export function refusedAgain(said: Said): Reply {
  const { refused = [], about } = said.talk
  const again = ofDangers(said, { dangers: refused })
  const todo = asksWhatNow.test(said.text) ? entryOn(refused, about ?? said.text)?.do : undefined
  return todo === undefined ? again : withLine(again, said.around.context.locale.own(todo))
}

/** To whoever asks why: the handbook's words come behind it. */
export function refusedWhy(said: Said): Reply {
  const { refused = [], about } = said.talk
  const again = ofDangers(said, { dangers: refused })
  return about === undefined ? again : withEntry(again, about, said.around.context.locale)
}
