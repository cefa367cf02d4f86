// What is said of a pack that has aged, as the resistance of its cells shows it.

import type { ageLimits } from '../../charging/envelope/limits/age.ts'
import type { WordsOf } from './lines.ts'

export const ageWords: WordsOf<typeof ageLimits> = ({ say, show }) => ({
  wornOut: ({ met }) => [
    say`Do not charge or fly it any more: its cells have ${met} times the resistance that they should, and the pack is worn out.`,
    say`Measure once more with clean plugs and warm cells; if that agrees, discharge it and hand it in where batteries are collected.`,
  ],
  tired: ({ found }) => [
    say`Keep a tired pack for gentle use, and charge it at ${show.rate(Math.min(1, found.known.situation.pack?.chemistry.recommendedRate_C.value ?? 1))} at most.`,
  ],
  oddCell: ({ met }) => [
    say`One cell has ${met} times the resistance of the middle one: watch it, it will be empty and full before the others.`,
  ],
})
