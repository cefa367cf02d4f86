// What is said of charge by volts, of volts by charge, and of what went back in.

import type { WordsOf } from '../../src/assistant/command.ts'
import { banded } from '../../src/assistant/quantified.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargeGivenBack, mostUsed } from '../../src/charging/upkeep/flight-meter.ts'
import { meterError_V, type Telling } from '../../src/charging/upkeep/rest-charge.ts'
import { storageTolerance_V } from '../../src/charging/upkeep/storage.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { twoDigits } from '../../src/ground/show.ts'
import type { Text } from '../../src/ground/text.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { followUp } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import type { percent } from './percent.ts'

export const percentWords: WordsOf<typeof percent> = locale => {
  const { say, show, own } = locale
  return {
    asks: [own('how full is a LiPo at 3.8 V'), own('how full is a 3S 1300 LiPo at 11.4 V')],
    summary: say`How full a resting pack is by its volts, its volts at a charge, or what share went back in.`,
    takes: {
      pack: { about: say`the pack, for pack volts and mAh`, as: text => text },
      chemistry: { about: say`where no pack is named`, as: text => text },
      at: { about: say`resting volts per cell or of the pack, or a percentage`, as: text => say`at ${text}` },
      back: { about: say`mAh that the charger put back after a flight`, as: text => say`${text} put back` },
    },
    answer: ({ used, permit, ...result }) => {
      const { pack } = permit.situation
      const name = own(pack.chemistry.name)
      const back =
        used &&
        say`${show.capacity(used.back_Ah)} put back is ${show.percent(used.share)} of the label: about that much was used, ${show.percent(Math.max(0, 1 - used.share))} (${show.charge(Math.max(0, pack.capacity_Ah - used.back_Ah))}) was left. Land with a fifth left, so that no more than ${show.capacity(used.most_Ah)} goes back.`
      if (result.by === 'back') return [back]
      const { by, soc, socBand, perCell_V, voltsBand, restPack_V, telling, left_Ah } = result
      const cell = say`${show.perCell(perCell_V)} a cell`
      const pack_V = restPack_V === undefined || pack.series === 1 ? undefined : show.voltage(restPack_V)
      const stands = pack_V === undefined ? cell : say`${cell} (${pack_V} for ${own(`${pack.series}S`)})`
      const charge = say`${stands} at rest is about ${show.percent(soc)} of a ${name} cell's charge`
      const rests = say`At ${show.percent(soc)} a ${name} cell rests at about ${show.perCell(perCell_V)}`
      const { low: least = soc, high: most = soc } = socBand ?? {}
      const { low: lowest_V = perCell_V, high: highest_V = perCell_V } = voltsBand ?? {}
      return [
        by === 'volts'
          ? say`${banded(charge, show.percent(least), show.percent(most), locale)}.`
          : say`${banded(rests, show.perCell(lowest_V), show.perCell(highest_V), locale)}.`,
        left_Ah === undefined
          ? undefined
          : say`Of ${show.capacity(pack.capacity_Ah)} about ${show.charge(left_Ah)} are left, and about ${show.charge(pack.capacity_Ah - twoDigits(left_Ah))} fill it.`,
        by === 'volts' ? markWords(result, pack, locale) : undefined,
        by === 'volts' || restPack_V === undefined
          ? undefined
          : say`That is ${show.voltage(restPack_V)} for ${own(`${pack.series}S`)}.`,
        tellingWords(telling, locale),
        back,
      ]
    },
    figures: {
      soc: say`charge`,
      restPerCell: say`volts a cell at rest`,
      restPack: say`volts of the pack`,
      chargeLeft: say`left in the pack, about`,
      putBack: say`put back`,
      usedShare: say`of the label`,
      mostUsed: say`most to put back`,
    },
    working: ({ permit, by, used }) => {
      const { curve, name } = permit.situation.pack.chemistry
      const back = !used
        ? []
        : [
            say`${show.capacity(used.back_Ah)} ÷ ${show.capacity(permit.situation.pack.capacity_Ah)} = ${show.percent(used.share)}; ${cite(chargeGivenBack, locale)}.`,
            say`Most: ${show.percent(mostUsed.value)} (${cite(mostUsed, locale)}).`,
          ]
      if (by === 'back') return back
      return [
        ...back,
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

/** Which of the volts that pilots go by it is: full, storage, or lower than they land. */
function markWords(
  { perCell_V, storage_V }: { readonly perCell_V: number; readonly storage_V: number },
  { chemistry }: Pack,
  { say, show }: Locale,
): Text | undefined {
  const floor_V = chemistry.restFloor_V.value
  if (perCell_V < floor_V)
    return perCell_V < chemistry.precharge_V.value
      ? say`That is lower than to land with, ${show.perCell(floor_V)} at rest.`
      : say`That is lower than to land with, ${show.perCell(floor_V)} at rest, but a charge from there is an ordinary one.`
  if (Math.abs(perCell_V - storage_V) <= storageTolerance_V.value) return say`That is storage level.`
  const full_V = chemistry.full_V.value
  return perCell_V >= full_V - storageTolerance_V.value ? say`That is full, ${show.perCell(full_V)}.` : undefined
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
