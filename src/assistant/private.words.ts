// What is said where others read along, of what is for one person alone.

import { type Said, told } from '../ground/locale.ts'

export const answeredInPrivate: Said = ({ say }) => say`I have answered you in private.`
export const notReached: Said = ({ say }) => say`I could not reach you in private.`

/** Told elsewhere, where we may speak: `missing` is a whole sentence. */
export const moderatorCanChange = told(
  (locale, missing: Said) => locale.say`${missing(locale)} A moderator there can change that.`,
)
