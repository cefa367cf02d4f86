// What is said of saved names in a question.

import type { Locale, Said } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { KitEntry, KitKind } from '../../memory/memory.ts'

export const kindNames = ({ say }: Locale): Readonly<Record<KitKind, Text>> => ({
  pack: say`pack`,
  charger: say`charger`,
  source: say`source`,
})

/** A name that stands for another thing than is wanted there. */
export const misfitWords =
  ({ name, kind, notation }: KitEntry): Said =>
  locale => {
    const { say, own } = locale
    return say`"${own(name)}" is saved as a ${kindNames(locale)[kind]}: ${own(notation)}.`
  }

export const fittingWanted =
  (option: string): Said =>
  ({ say, own }) =>
    say`a value for "${own(option)}", or the name of one`

/** Behind the line that says how a question was read. */
export const standsFor = (readAs: Text, { name, notation }: KitEntry, { say, own }: Locale): Text =>
  say`${readAs}, where ${own(name)} is ${own(notation)}`
