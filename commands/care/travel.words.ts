// What is said of packs on a passenger aircraft.

import type { WordsOf } from '../../src/assistant/command.ts'
import { airLimits } from '../../src/charging/upkeep/transport.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { followUp } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import type { Carried, travel } from './travel.ts'

export const travelWords: WordsOf<typeof travel> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Watt-hours of packs, and how they may go on a passenger aircraft.`,
    asks: [own('may I fly with four 3S 720 LiHV'), own('can I take a 6S 5000 LiPo on a plane')],
    takes: {
      packs: {
        about: say`the packs, with ";" between them; "${own('4x')}" before one means four of it`,
        as: text => text,
      },
    },
    answer: ({ items }) => {
      const flying = items.filter(({ permit }) => permit !== undefined)
      const all = (some: readonly Carried[]) => (some.length === 0 ? undefined : names(some, locale))
      const staying = all(items.filter(({ permit }) => permit === undefined))
      const asking = all(flying.filter(({ flies }) => flies === 'with approval'))
      const free = all(flying.filter(({ flies }) => flies === 'cabin'))
      return [
        staying && say`May not go with passengers: ${staying}. Leave behind, or ship as dangerous goods.`,
        asking && say`With the airline's approval, in the cabin: ${asking}.`,
        free && say`In the cabin with you: ${free}.`,
      ]
    },
    figures: {
      energy: (of, { items }) => say`one ${own(items[of - 1]?.name ?? '')}`,
      packCount: say`packs`,
      totalEnergy: say`all together`,
    },
    working: ({ items }) => {
      const { free_Wh, approved_Wh, approvedSpares } = airLimits.value
      return [
        ...items.map(item => energyLine(item, locale)),
        say`Limits for one pack: to ${show.energy(free_Wh)} carried; to ${show.energy(approved_Wh)} with the airline's approval, ${show.number(approvedSpares, 0)} loose ones at most; above that not by passengers (${cite(airLimits, locale)}). The watt-hours printed on a label count before these.`,
        say`Charge: carry packs at storage or below (common practice).`,
      ]
    },
    next: ({ items }) =>
      items
        .slice(0, 2)
        .map(({ name, pack }) =>
          followUp(say`${own(name)} to storage`, 'current', { pack: packKind.write(pack), to: 'storage' }),
        ),
  }
}

const names = (items: readonly Carried[], { say, show, own }: Locale): Text =>
  joined(
    items.map(({ name, energy_Wh }) => say`${own(name)} (${show.energy(energy_Wh)})`),
    ', ',
  )

function energyLine({ name, pack, energy_Wh }: Carried, locale: Locale): Text {
  const { say, show, own } = locale
  const { nominal_V } = pack.chemistry
  return say`${own(name)}: ${show.perCell(nominal_V.value)} × ${own(String(pack.series))} × ${show.capacity(pack.capacity_Ah)} = ${show.energy(energy_Wh)} (nominal volts: ${cite(nominal_V, locale)}).`
}
