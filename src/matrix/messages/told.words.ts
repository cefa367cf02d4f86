// What is said in a room besides answers.

import type { Said } from '../../ground/locale.ts'

export const leavingNow: Said = ({ say }) => say`Leaving. Invite me again whenever you like.`
export const onlyModeratorsSendAway: Said = ({ say }) => say`Only a moderator of this room can send me away.`
export const keyMissing: Said = ({ say }) =>
  say`I could not read a message here, because its encryption key has not reached me. Please ask again. If that does not help, check in your app whether it sends keys to verified devices only, and verify mine.`

export const cameWhileAway: Said = ({ say }) => say`This came while I was away; ask again if you still need it.`

export const pictureIsStale: Said = ({ say }) => say`The picture that was here no longer fits: the question was edited.`
