// A pack's log in words: days, what tells of its age, and by which thresholds.

import { capacityLeft, type Sign } from '../../src/charging/upkeep/age-signs.ts'
import { type CapacityReading, leastShare } from '../../src/charging/upkeep/charge-note.ts'
import { ages, oddCell } from '../../src/charging/upkeep/health.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { cite } from '../shared/setting.words.ts'

/** "2031-05-03". */
export const dayWords = (at: Date, { own }: Locale): Text => own(at.toISOString().slice(0, 10))

export function signWords(sign: Sign, { say, show }: Locale): Text {
  const numberOf = (cell: number) => show.number(cell + 1, 0)
  switch (sign.kind) {
    case 'below label':
      return say`it holds ${show.percent(sign.share)} of its label at the most`
    case 'below itself':
      return say`it holds ${show.percent(sign.share)} of what it did when the log began`
    case 'resistance':
      return sign.beside === 'itself'
        ? say`its cells have ${show.number(sign.times, 1)} times the resistance of when the log began`
        : say`its cells have ${show.number(sign.times, 1)} times the most that published cells of its kind show`
    case 'odd cell':
      return say`cell ${numberOf(sign.cell)} has far more resistance than the others`
    case 'spread':
      return say`its cells ended ${show.perCell(sign.spread_V)} apart, cell ${numberOf(sign.cell)} the lowest`
  }
}

export function thresholdWords(locale: Locale): readonly Text[] {
  const { say, show } = locale
  const { aged, worn } = ages.value
  const { ageing, retire } = capacityLeft.value
  return [
    say`Capacity: ageing under ${show.percent(ageing)}, retire under ${show.percent(retire)} (${cite(capacityLeft, locale)}). The label counts only for retiring: new packs hold up to ${show.percent(0.13)} less than theirs.`,
    say`Resistance at ${show.temperature(25)}: ageing from ${show.number(aged, 1)} times, retire from ${show.number(worn, 1)} times (${cite(ages, locale)}); a cell apart from the others is ageing (${cite(oddCell, locale)}).`,
    say`A charge counts for the capacity where its start is known and it moves ${show.percent(leastShare.value)} or more (${cite(leastShare, locale)}). Of the last three the middle one stands for now, of the first three for the start.`,
  ]
}

/** "690 mAh (620 to 760 mAh)". */
export const capacityWords = ({ capacity_Ah, band_Ah }: CapacityReading, { say, show }: Locale): Text =>
  say`${show.charge(capacity_Ah)} (${show.charge(band_Ah.low)} to ${show.charge(band_Ah.high)})`
