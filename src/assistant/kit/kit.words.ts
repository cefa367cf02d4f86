// What is said of saved names, and of a name that cannot be one.

import { type Locale, type Said, told } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'
import type { KitEntry, KitKind } from '../../memory/kit.ts'

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

export const kindNames = ({ say }: Locale): Readonly<Record<KitKind, Text>> => ({
  pack: say`pack`,
  charger: say`charger`,
  source: say`source`,
})

/** The name stands for another thing than is wanted there. */
export const misfit = ({ name, kind, notation }: KitEntry, option: string): Problem =>
  new Problem({
    what: locale => {
      const { say, own } = locale
      return say`"${own(name)}" is saved as a ${kindNames(locale)[kind]}: ${own(notation)}.`
    },
    token: name,
    expected: ({ say, own }) => say`a value for "${own(option)}", or the name of one`,
    example: 'kit list',
  })

/** Behind the line that says how a question was read. */
export const standsFor = (readAs: Text, { name, notation }: KitEntry, { say, own }: Locale): Text =>
  say`${readAs}, where ${own(name)} is ${own(notation)}`

/** Offered where a danger was told of a pack of the kit. */
export const noteIt = (name: string, { say, own }: Locale): Text => say`Note it for ${own(name)}`
