// What a reading took for granted, and what it left out, in words.

import { type Said, told } from '../../../ground/locale.ts'

export const chemistryAssumed = told(
  ({ say, own }, name: string) => say`no type was said: taken as ${own(name)}, as most are`,
)

export const chemistryByVolts = told(
  ({ say, own }, name: string) => say`no type was said: taken as ${own(name)}, by its volts`,
)

export const cellsAssumed: Said = ({ say }) => say`the number of cells was not said: volts are those of one cell`

export const capacityFrom = told(
  ({ say, show }, label_Wh: number, capacity_Ah: number) =>
    say`${show.energy(label_Wh)} at the volts on the label are ${show.capacity(capacity_Ah)}`,
)

export const keptFrom = told(
  ({ say, own }, options: readonly string[]) => say`kept from before: ${own(options.join(', '))}`,
)

const quotes = (words: readonly string[]): string => words.map(word => `"${word}"`).join(', ')

export const changesNothing = told(
  ({ say, own }, words: readonly string[]) => say`this changes nothing: ${own(quotes(words))}`,
)

export const notUnderstood = told(
  ({ say, own }, words: readonly string[]) => say`not understood: ${own(quotes(words))}`,
)

export const toldBefore = told(
  ({ say, own }, kept: readonly { readonly typed: string }[]) =>
    say`told before: ${own(quotes([...new Set(kept.map(({ typed }) => typed))]))}`,
)

export const readAsCapacity = told(
  ({ say, own, show }, typed: string, capacity_Ah: number) =>
    say`${own(typed)} is read as what it holds: ${show.capacity(capacity_Ah)}`,
)
