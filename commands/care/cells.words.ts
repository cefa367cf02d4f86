// What is said of cell readings.

import type { WordsOf } from '../../src/assistant/command.ts'
import { spreads } from '../../src/charging/setting/balancing.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { apartKind, currentKind, packKind, stateKind } from '../../src/language/kinds/values.ts'
import { balancerAssumed, bledWords } from '../shared/charge.words.ts'
import { followUp } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import type { cells } from './cells.ts'

export const cellsWords: WordsOf<typeof cells> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Judge measured cell voltages: spread, which cell, go or not, balancing time.`,
    asks: [
      own('are 3.82 3.83 3.79 3.83 V fine on a 4S 1500 LiPo'),
      own('my 3S 850 LiPo shows 3.81 3.84 3.79 V, is that fine'),
    ],
    takes: {
      pack: { about: say`as its label says`, as: text => text },
      chemistry: { about: say`where the capacity does not matter: no balancing time then`, as: text => text },
      volts: { about: say`one reading a cell, in the order of the balance plug`, as: text => say`cells at ${text}` },
      when: {
        about: say`rest (half an hour after any use) or full (end of a charge); rest when not said`,
        as: text => ((text as string) === 'full' ? say`at the end of a charge` : say`at rest`),
      },
      balance: { about: say`current of the balancer`, as: text => say`balanced with ${text}` },
    },
    answer: found => [
      spreadWords(found, locale),
      found.evenness === 'balanced' || found.balance_s === undefined
        ? undefined
        : say`Balancing takes at least ${show.roughly(found.balance_s, Math.ceil)} at ${show.current(found.balance_A)}.`,
      found.endedShort ? shortWords(found, locale) : undefined,
      found.left && say`At rest they hold about ${show.percent(found.left.soc)} of their charge.`,
    ],
    figures: {
      spread: say`between highest and lowest`,
      lowestCell: say`lowest cell`,
      lowestPerCell: say`lowest reading`,
      highestCell: say`highest cell`,
      highestPerCell: say`highest reading`,
      packVoltage: say`sum`,
      left: say`charge left, by the mean of the cells`,
      balanceTime: say`balancing takes at least`,
    },
    working: (found, { volts }) => [
      ...volts.map((cell_V, index) => say`Cell ${show.number(index + 1, 0)}: ${show.number(cell_V, 3)} V.`),
      say`Judged by: ${cite(spreads, locale)}.`,
      balanceWorking(found, locale),
    ],
    assumed: ({ balance_s }, { balance }) => [
      balance === undefined && balance_s !== undefined ? balancerAssumed(locale) : undefined,
    ],
    next: ({ spread_V, sum_V, evenness }, { pack, volts, when = 'rest', balance }) => {
      if (!pack) return []
      const packText = { pack: packKind.write(pack) }
      if (when === 'full') return [followUp(say`What to set?`, 'current', packText)]
      // What was read goes on with it: cells that lie apart are charged more gently.
      const read = {
        ...packText,
        from: stateKind.write({ kind: 'rest', perCell_V: Number((sum_V / volts.length).toFixed(3)) }),
        apart: evenness === 'balanced' ? undefined : apartKind.write(spread_V),
      }
      return [
        followUp(say`What to set?`, 'current', read),
        followUp(say`How long?`, 'time', {
          ...read,
          balance: balance === undefined ? undefined : currentKind.write(balance),
        }),
      ]
    },
  }
}

type Found = Parameters<ReturnType<typeof cellsWords>['answer']>[0]

/** How far apart they are stands before it already where that must be said. */
function spreadWords(found: Found, { say, show }: Locale): Text {
  const apart = show.voltage(found.spread_V)
  const [cell, low] = [show.number(found.lowest + 1, 0), show.perCell(found.lowest_V)]
  if (found.spread_V === 0) return say`Balanced: all cells read the same.`
  if (found.evenness === 'balanced') return say`Balanced: the cells are ${apart} apart.`
  if (found.evenness !== 'uneven') return say`Cell ${cell} is lowest at ${low}.`
  return found.permit.situation.when === 'full'
    ? say`Leave the pack on the balancer until they meet: cell ${cell} is lowest at ${low}, ${apart} below the highest.`
    : say`Balance first: cell ${cell} is lowest at ${low}, ${apart} below the highest.`
}

function shortWords({ permit }: Found, { say, show, own }: Locale): Text {
  const { full_V, name } = permit.situation.pack.chemistry
  return say`The charge ended well below ${show.perCell(full_V.value)}, which is full for ${own(name)}: it was ended early, or the charger was set to another chemistry.`
}

function balanceWorking({ balance_s, permit, ...found }: Found, locale: Locale): Text | undefined {
  if (balance_s === undefined) return undefined
  const bled = bledWords({ ...found, duration_s: balance_s }, permit.situation.pack, locale)
  return locale.say`${bled} On the flat part of a curve millivolts hide much charge.`
}
