// What is said of saved names in a question.

import { type Locale, told } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { KitEntry, KitKind } from '../../memory/memory.ts'

export const kindNames = ({ say }: Locale): Readonly<Record<KitKind, Text>> => ({
  pack: say`pack`,
  charger: say`charger`,
  source: say`source`,
})

/** A name that stands for another thing than is wanted there. */
export const misfitWords = told((locale, { name, kind, notation }: KitEntry) => {
  const { say, own } = locale
  return say`"${own(name)}" is saved as a ${kindNames(locale)[kind]}: ${own(notation)}.`
})

export const fittingWanted = told(
  ({ say, own }, option: string) => say`a value for "${own(option)}", or the name of one`,
)

/** Behind the line that says how a question was read. */
export const standsFor = (readAs: Text, { name, notation }: KitEntry, { say, own }: Locale): Text =>
  say`${readAs}, where ${own(name)} is ${own(notation)}`
