// What is said of a charge that was noted.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { type CapacityReading, type ChargeNote, leastShare } from '../../src/charging/upkeep/charge-note.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { cellVoltsKind } from '../../src/language/kinds/reading-kinds.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { followUp } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import { capacityWords } from './log.words.ts'
import type { logCharge } from './log-charge.ts'

export const logChargeWords: WordsOf<typeof logCharge> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Notes a charge of a saved pack, to follow its capacity and resistance.`,
    tells: [own('I put 640 mAh back into wren')],
    takes: {
      name: { about: say`the name of the saved pack`, as: text => text },
      'put-back': { about: say`what the charger counted into the pack`, as: text => say`took back ${text}` },
      from: { about: say`volts per cell at rest before it; empty after a full discharge` },
      to: { about: say`where the charge ended; full when not said` },
      took: { about: say`how long it took`, as: text => say`in ${text}` },
      current: { about: say`set on the charger`, as: text => say`at ${text}` },
      until: { about: say`current at which it ended`, as: text => say`until ${text}` },
      'to-cutoff': {
        about: say`how long until the current began to fall`,
        as: text => say`${text} of it to the cutoff`,
      },
      cells: { about: say`volts of each cell at its end`, as: text => say`cells at its end ${text}` },
      resistance: { about: say`of one cell, or one for each cell`, as: text => say`cells of ${text}` },
      temperature: {
        about: say`of the cells when the resistance was read; ${show.temperature(25)} when not said`,
        as: text => say`at ${text}`,
      },
      counted: {
        about: say`what the flight controller had counted as used, from full`,
        as: text => say`counted in flight ${text}`,
      },
    },
    answer: ({ note, capacity, isOdd }, { name }) => [
      say`Noted: ${own(name)} took back ${show.capacity(note.charge_Ah)}.`,
      isOdd
        ? say`It does not go with its other charges: another pack, a charge that was stopped, or a slip of the pen? It is left aside until another is like it.`
        : capacity && say`By that it holds about ${capacityWords(capacity, locale)}.`,
    ],
    changed: (_, { name }) =>
      say`The charge is noted; if a number was a slip of the pen, "${own(`log undo name: ${name}`)}" takes it back.`,
    figures: {
      chargeIn: say`put back`,
      capacity: say`capacity by this charge`,
      meanCurrent: say`current on average`,
      meanRate: say`rate on average`,
      cellResistance25C: say`a cell at ${show.temperature(25)}`,
    },
    working: ({ note, pack, capacity }) => [capacityWorking(note, pack, capacity, locale)],
    next: ({ pack, when }, { name, cells, counted }) => [
      followUp(say`Its log`, 'log show', { name }),
      cells &&
        followUp(say`Judge its cells`, 'cells', {
          pack: packKind.write(pack),
          volts: cellVoltsKind.write(cells),
          when,
        }),
      counted === undefined ? undefined : followUp(say`Correct the current meter`, 'log meter', { name }),
      followUp(say`Take it back`, 'log undo', { name }),
    ],
  }
}

function capacityWorking(
  { charge_Ah, from }: ChargeNote,
  { chemistry }: Pack,
  capacity: CapacityReading | undefined,
  locale: Locale,
): Text {
  const { say, show, own } = locale
  if (capacity) {
    return say`Capacity: ${show.capacity(charge_Ah)} ÷ ${show.percent(capacity.share)} moved = ${show.capacity(capacity.capacity_Ah)} (voltage curve: ${cite(chemistry.curve, locale)}); the range spans published cells of the kind. A full cycle, noted with "${own('from: empty')}", tells it best.`
  }
  return from
    ? say`It moved too little to tell the capacity (${cite(leastShare, locale)}).`
    : say`Without "${own('from')}", the volts per cell at rest before the charge, it tells nothing of the capacity.`
}
