// What is said of numbers, lists and phrases of parts that cannot be read.

import { type Said, told } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

export const thousandsOrDecimals: Said = ({ say }) => say`A comma before three digits could mark thousands or decimals.`

export const pointAndNoThousands = told(
  (locale, expected: Said) => locale.say`${expected(locale)}, with a point for decimals and nothing for thousands`,
)

export const notOneNumber: Said = ({ say }) => say`That is not one number.`
export const onlyPlainDecimals: Said = ({ say }) => say`Only plain decimal numbers are read here.`

/** Set as one of those that are known, cells of that kind would be overcharged. */
export const notCovered = told(
  ({ say, own }, word: string) =>
    say`I do not work out ${own(word)}: I know lithium packs only, and their settings would be wrong for it.`,
)

export const cannotPlace = told(({ say, own }, word: string) => say`I cannot place "${own(word)}" there.`)

export const backwards: Said = ({ say }) => say`That range runs backwards or is empty.`
export const smallerFirst: Said = ({ say }) => say`the smaller value first`

export type Listed = 'packs' | 'chargers' | 'sources'

const listed = ({ say }: Parameters<Said>[0], name: Listed): Text => {
  switch (name) {
    case 'packs':
      return say`packs`
    case 'chargers':
      return say`chargers`
    case 'sources':
      return say`sources`
  }
}

export const severalOf = told(
  (locale, name: Listed, most: number) =>
    locale.say`1 to ${locale.show.number(most, 0)} ${listed(locale, name)} with ";" between them`,
)

export const moreThan = told(
  (locale, name: Listed, most: number) =>
    locale.say`That is more than ${locale.show.number(most, 0)} ${listed(locale, name)}.`,
)

export const numberOf = told((locale, name: Listed) => locale.say`a number of ${listed(locale, name)}`)
