// The rules of a club in words: a card that fits a screen, with who says so behind it.

import type { WordsOf } from '../../src/assistant/command.ts'
import { limits } from '../../src/charging/envelope/limits/index.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import { joined } from '../../src/ground/text.ts'
import { dangerLines, dangerSources } from '../../src/handbook/rules/card.words.ts'
import { followUp } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import { fullKey, type rules } from './rules.ts'

export const rulesWords: WordsOf<typeof rules> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`The charging rules of this club on one card.`,
    asks: [own('what are the rules here'), own('show me the rules card')],
    takes: {},
    answer: () => [
      say`Charge only what is sound, in sight and set right, on bare stone or tile.`,
      say`Smoke, fire, injury: people first, and call for help.`,
      say`Never charge a pack that is swollen, cut, wet, hot or of unknown type.`,
      say`Balance lead on; type and cell count as on the label; 1C unless it says more.`,
      say`Never alone, asleep, driving, on cloth, near fuel or in the way out.`,
      say`After a crash, a cold night or a low cell: put that right first.`,
      say`Not flying within two days? To storage.`,
    ],
    figures: Object.fromEntries(chemistries.map(one => [fullKey(one), own(one.name)])),
    shown: (number, { key }, { cells }) => {
      const cell = cells.find(({ chemistry }) => fullKey(chemistry) === key)
      if (!cell) return number
      return joined(
        [
          say`full ${number} a cell`,
          say`storage ${show.perCell(cell.storage_V)}`,
          say`landing ${show.perCell(cell.landing_V)}`,
          say`dead ${show.perCell(cell.dead_V)}`,
          say`source ${show.perCell(cell.source_V)}`,
          say`to ${show.rate(cell.most_C)}`,
          say`${show.temperature(cell.coldest_C)} to ${show.temperature(cell.hottest_C)}`,
        ],
        '; ',
      )
    },
    working: () => [
      ...dangerLines(locale),
      say`Where a label or datasheet says less, less holds. The highest rate is for labels that give none (${cite(chemistries[0].highestRate_C, locale)}).`,
      say`Landing is at rest after a flight (${own(limits.belowFloor.from)}); a source is stopped under load, cell by cell (${own(limits.sourceAtFloor.from)}); below dead a cell is retired (${own(limits.deadCell.from)}).`,
      say`Temperatures: ${own(limits.tooCold.from)}. In the cold less current is right: "current" works it out.`,
      ...dangerSources(locale),
      say`What this club has tightened itself: house show.`,
    ],
    next: () => [followUp(say`What this club has set`, 'house show'), followUp(say`Lessons`, 'lesson list')],
  }
}
