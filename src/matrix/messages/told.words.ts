// What is said in a room besides answers.

import { type Said, told } from '../../ground/locale.ts'

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
