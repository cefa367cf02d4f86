// What is said in a room besides answers.

import { type Locale, type Said, told } from '../../ground/locale.ts'
import { joined, type Text } from '../../ground/text.ts'

export const leavingNow: Said = ({ say }) => say`Leaving. Invite me again whenever you like.`
export const onlyModeratorsSendAway: Said = ({ say }) => say`Only a moderator of this room can send me away.`
export const keyMissing: Said = ({ say }) =>
  say`I could not read a message here, because its encryption key has not reached me. Please ask again. If that does not help, check in your app whether it sends keys to verified devices only, and verify mine.`

export const answeredInPrivate: Said = ({ say }) => say`I have answered you in private.`
export const notReached: Said = ({ say }) => say`I could not reach you in private.`
export const cameWhileAway: Said = ({ say }) => say`This came while I was away; ask again if you still need it.`

/** Told elsewhere, where we may speak: `missing` is a whole sentence. */
export const moderatorCanChange = told(
  (locale, missing: Said) => locale.say`${missing(locale)} A moderator there can change that.`,
)

export const pictureIsStale: Said = ({ say }) => say`The picture that was here no longer fits: the question was edited.`

interface Done {
  readonly deed: string
  /** What takes it back, as it is to be typed. */
  readonly way: string | undefined
}

const wayBack = ({ way }: Done, { say, own }: Locale): Text =>
  way === undefined ? say`It cannot be taken back.` : say`To take it back: ${own(way)}`

/** Of a question that was edited after it was done. */
export const stillDone = told((locale, done: Done) =>
  joined([
    locale.say`You edited this after it was done: ${locale.own(done.deed)}. The edit changed nothing; ask anew.`,
    wayBack(done, locale),
  ]),
)

/** Of a question that was taken away. */
export const stillDoneThough = told((locale, done: Done) =>
  joined([
    locale.say`The question is gone, and so is my answer. It was done all the same: ${locale.own(done.deed)}.`,
    wayBack(done, locale),
  ]),
)
