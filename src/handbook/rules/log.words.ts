// What is said of what the charges noted of a pack show.

import type { logLimits } from '../../charging/envelope/limits/log.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { Met, WordsOf } from './lines.ts'

export const logWords: WordsOf<typeof logLimits> = locale => {
  const { say } = locale
  const makeSure = say`Make sure with one more full cycle, warm cells and clean plugs; if that agrees, discharge it and hand it in where batteries are collected.`
  return {
    putBackTooMuch: met => [
      say`Do not charge it again until you know why: it took back ${putBack(met, locale)}, ${met.met} of its label.`,
      say`Unplug it and feel it: hot or swollen, put it outdoors on stone. Check type and cell count on the charger, and measure every cell.`,
    ],
    lostToLabel: ({ met, than }) => [
      say`Retire it: it holds ${met} of its label at the most, and under ${than} it is spent.`,
      makeSure,
    ],
    lostToStart: ({ met, than }) => [
      say`Retire it: it holds ${met} of what it did when the log began, and under ${than} it is spent.`,
      makeSure,
    ],
    chargedTooFast: ({ met, than }) => [
      say`It was charged at ${met} on average, and ${than} is the most: feel it now.`,
      say`Hot or swollen, put it outdoors on stone and do not use it again. Set less the next time, unless the label of the maker names a higher charge rate.`,
    ],
    usedDeep: ({ met, than }) => [
      say`${met} of the label was used, more than ${than}: land earlier, deep flights age a pack fast. Measure every cell.`,
    ],
    faded: met => [say`It has lost some of what it held: ${gentleUse(met, locale)}`],
    resistanceUp: met => [
      say`Its cells have ${met.met} times the resistance that they should: ${gentleUse(met, locale)}`,
    ],
  }
}

function gentleUse({ found }: Met, { say, show }: Locale): Text {
  const usual_C = found.known.situation.pack?.chemistry.recommendedRate_C.value ?? 1
  return say`keep it for gentle use, and charge it at ${show.rate(Math.min(1, usual_C))} at most.`
}

const putBack = ({ found: { known } }: Met, { show }: Locale): Text =>
  show.capacity((known.facts.putBackShare ?? 0) * (known.situation.pack?.capacity_Ah ?? 0))
