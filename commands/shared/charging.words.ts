// Details of a charge in words, the same wherever they are taken, and the stops of its charger.

import type { OptionWords } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { ofCharge } from './charging.ts'

export const ofChargeWords = ({ say }: Locale): Readonly<Record<keyof typeof ofCharge, OptionWords>> => ({
  pack: { about: say`the pack as its label says (cells, mAh, type)`, as: text => text },
  charger: {
    about: say`the currents it offers, and what else you know of it`,
    as: text => say`on a charger with ${text}`,
  },
  source: { about: say`what feeds the charger`, as: text => say`fed by ${text}` },
  from: { about: say`where the pack stands now`, as: text => say`from ${text}` },
  to: { about: say`where it is to go; full when not said`, as: text => say`to ${text}` },
  temperature: { about: say`of the cells; a room when not said`, as: text => say`cells at ${text}` },
  apart: { about: say`how far the cells lie apart at rest`, as: text => say`cells ${text} apart` },
})

export const stopFigureNames = ({ say }: Locale) => ({
  stopCapacity: say`charger's own stop by mAh`,
  stopTimer: say`charger's own stop by time`,
})
