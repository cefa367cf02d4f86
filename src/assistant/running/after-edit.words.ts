// What is said of a question that was edited or taken away after it had changed something.

import { type Locale, told } from '../../ground/locale.ts'
import { joined, type Text } from '../../ground/text.ts'
import type { Done } from './after-edit.ts'

const wayBack = ({ way }: Done, { say, own }: Locale): Text =>
  way === undefined ? say`It cannot be taken back.` : say`To take it back: ${own(way)}`

export const stillDone = told((locale, done: Done) =>
  joined([
    locale.say`You edited this after it was done: ${locale.own(done.deed)}. The edit changed nothing; ask anew.`,
    wayBack(done, locale),
  ]),
)

export const stillDoneThough = told((locale, done: Done) =>
  joined([
    locale.say`The question is gone, and so is my answer. It was done all the same: ${locale.own(done.deed)}.`,
    wayBack(done, locale),
  ]),
)
