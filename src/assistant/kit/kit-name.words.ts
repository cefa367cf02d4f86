// What is said of a name that cannot be one.

import { type Said, told } from '../../ground/locale.ts'

export const noName: Said = ({ say }) => say`That cannot be a name.`

export const nameWanted = told(
  ({ say, show }, mostWords: number, longest: number) =>
    say`one to ${show.number(mostWords, 0)} words of letters, digits and hyphens, each starting with a letter, ${show.number(longest, 0)} characters in all`,
)

/** It means something else: a value, or words that questions are asked with. */
export const nameTaken = told(({ say, own }, name: string, by: 'value' | 'words') =>
  by === 'value'
    ? say`The name "${own(name)}" would be read as a value.`
    : say`The name "${own(name)}" is made of words that questions are asked with.`,
)

export const freeNameWanted: Said = ({ say }) => say`a name that means nothing else in a question`
