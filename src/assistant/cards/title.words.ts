// What is said of a title that cannot be one.

import { type Said, told } from '../../ground/locale.ts'

export const noTitle: Said = ({ say }) => say`That cannot be a title.`

export const titleWanted = told(
  ({ say, show }, longest: number) => say`letters or digits, ${show.number(longest, 0)} characters at most, no colon`,
)
