// Why a notice was not posted, where no platform has said so itself.

import type { Said } from '../../ground/locale.ts'

export const onlyAnswers: Said = ({ say }) => say`Here I can only answer, not post by myself.`
export const notTaken: Said = ({ say, own }) =>
  say`The chat did not take it just now; ${own('"answer post"')} tries again.`
