// What is said of charge by volts, and of volts by charge.

import type { WordsOf } from '../../src/assistant/command.ts'
import { meterError_V, type Telling } from '../../src/charging/upkeep/rest-charge.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { followUp } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import type { percent } from './percent.ts'

export const percentWords: WordsOf<typeof percent> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`How full a resting pack is by its volts, or its volts at a charge.`,
    asks: [own('how full is a LiPo at 3.8 V')],
    takes: {
      pack: { about: say`the pack, for pack volts and mAh`, as: text => text },
      chemistry: { about: say`where no pack is named`, as: text => text },
      at: { about: say`resting volts per cell or of the pack, or a percentage`, as: text => say`at ${text}` },
    },
    answer: ({ by, soc, socBand, perCell_V, voltsBand, restPack_V, telling, permit }) => {
      const { pack } = permit.situation
      const name = own(pack.chemistry.name)
      return [
        by === 'volts'
          ? say`${show.perCell(perCell_V)} per cell at rest is about ${show.percent(soc)} of a ${name} cell's charge (${show.percent(socBand?.low ?? soc)} to ${show.percent(socBand?.high ?? soc)}).`
          : say`At ${show.percent(soc)} a ${name} cell rests at about ${show.perCell(perCell_V)} (${show.perCell(voltsBand?.low ?? perCell_V)} to ${show.perCell(voltsBand?.high ?? perCell_V)}).`,
        by === 'volts' || restPack_V === undefined
          ? undefined
          : say`That is ${show.voltage(restPack_V)} for ${own(`${pack.series}S`)}.`,
        tellingWords(telling, locale),
      ]
    },
    figures: {
      soc: say`charge`,
      restPerCell: say`volts per cell at rest`,
      restPack: say`volts of the pack`,
      chargeLeft: say`left in the pack, about`,
    },
    working: ({ permit }) => {
      const { curve, name } = permit.situation.pack.chemistry
      return [
        say`Curve of ${own(name)} at rest: ${cite(curve, locale)}.`,
        say`The range spans published cells of the kind and a meter that is off by ${show.perCell(meterError_V.value)} (${cite(meterError_V, locale)}).`,
        say`At rest means unplugged for half an hour or more (common practice): volts climb for that long after a flight, and sink after a charge.`,
      ]
    },
    next: ({ by }, { pack }) => [
      pack && by === 'volts' ? followUp(say`What to set?`, 'current', { pack: packKind.write(pack) }) : undefined,
    ],
  }
}

function tellingWords(telling: Telling, { say }: Locale): Text | undefined {
  switch (telling) {
    case 'well':
      return undefined
    case 'roughly':
      return say`Cells of this kind differ much here: take it as a rough guide.`
    case 'flat':
      return say`The curve is flat here: volts tell little. Count the mAh put in instead.`
  }
}
