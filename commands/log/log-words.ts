// A pack's log in words: what tells of its age, and by which thresholds.

import type { Answer } from '../../src/assistant/reply.ts'
import { type Condition, capacityLeft, type Sign } from '../../src/charging/upkeep/age-signs.ts'
import { type CapacityReading, leastShare } from '../../src/charging/upkeep/charge-note.ts'
import { ages, oddCell } from '../../src/charging/upkeep/health.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Show } from '../../src/ground/show.ts'
import type { Text } from '../../src/ground/text.ts'
import { cite } from '../shared/working.ts'

export const conditionVerdicts: Record<Condition, NonNullable<Answer['verdict']>> = {
  healthy: 'go',
  ageing: 'go with care',
  retire: 'do not charge',
}

export function signWords(sign: Sign, show: Show): string {
  switch (sign.kind) {
    case 'below label':
      return `it holds ${show.percent(sign.share)} of its label at the most`
    case 'below itself':
      return `it holds ${show.percent(sign.share)} of what it did when the log began`
    case 'resistance':
      return sign.beside === 'itself'
        ? `its cells have ${show.number(sign.times, 1)} times the resistance of when the log began`
        : `its cells have ${show.number(sign.times, 1)} times the most that published cells of its kind show`
    case 'odd cell':
      return `cell ${sign.cell + 1} has far more resistance than the others`
    case 'spread':
      return `its cells ended ${show.number(sign.spread_V, 2)} V apart, cell ${sign.cell + 1} the lowest`
  }
}

export function thresholdWords(show: Show): string[] {
  const { aged, worn } = ages.value
  const { ageing, retire } = capacityLeft.value
  return [
    `Capacity: ageing under ${show.percent(ageing)}, retire under ${show.percent(retire)} (${cite(capacityLeft)}). The label counts only for retiring: new packs hold up to 13 % less than theirs.`,
    `Resistance at 25 °C: ageing from ${show.number(aged, 1)} times, retire from ${show.number(worn, 1)} times (${cite(ages)}); a cell apart from the others is ageing (${cite(oddCell)}).`,
    `A charge counts for the capacity where its start is known and it moves ${show.percent(leastShare.value)} or more (${cite(leastShare)}). Of the last three the middle one stands for now, of the first three for the start.`,
  ]
}

/** "690 mAh (620 to 760 mAh)". */
export const capacityWords = ({ capacity_Ah, band_Ah }: CapacityReading, show: Show): string =>
  `${show.capacity(capacity_Ah)} (${show.capacity(band_Ah.low)} to ${show.capacity(band_Ah.high)})`

/** "2031-05-03". */
export const dayWords = (at: Date, { own }: Locale): Text => own(at.toISOString().slice(0, 10))
