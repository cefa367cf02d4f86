// How packs may travel on a passenger aircraft: their watt-hours against the air limits.

import { required, session } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { type AirClass, airClass, labelEnergy_Wh } from '../../src/charging/upkeep/transport.ts'
import { bagKind } from '../../src/language/kinds/session-kinds.ts'
import { packKind } from '../../src/language/kinds/values.ts'

export interface Carried {
  /** Absent where it stays behind. */
  readonly permit: Permit | undefined
  readonly pack: Pack
  readonly count: number
  /** As the pack is written. */
  readonly name: string
  /** Of one, in Wh, to a hundredth, up: a limit must not be met by rounding. */
  readonly energy_Wh: number
  readonly flies: AirClass
}

export const travel = session({
  name: 'travel',
  shelf: 'care travel',
  takes: { packs: required(bagKind) },
  examples: [
    'travel packs: 4x 3S 720 LiHV; 2x 6S 1300 LiPo',
    'travel packs: 4S 8000 Li-ion',
    'travel packs: 3x 6S 5000 LiPo; 6S 12000 LiPo',
  ],
  situations: ({ packs }) => packs.map(({ item: { pack } }) => ({ act: 'carry' as const, pack })),
  compute: (permits, { packs }) => ({
    items: packs.map(({ count, item: { pack } }, index): Carried => {
      const energy_Wh = labelEnergy_Wh(pack)
      return {
        permit: permits[index],
        pack,
        count,
        name: packKind.write(pack),
        energy_Wh: upward(energy_Wh),
        flies: airClass(energy_Wh),
      }
    }),
    total_Wh: upward(packs.reduce((sum, { item, count }) => sum + labelEnergy_Wh(item.pack) * count, 0)),
  }),
  deeds: ({ items }) => {
    const flying = items.filter(({ permit }) => permit !== undefined)
    const needLeave = countOf(flying.filter(({ flies }) => flies === 'with approval'))
    return flying.map(({ permit, pack }) => ({ permit: permit as Permit, energy_Wh: labelEnergy_Wh(pack), needLeave }))
  },
  figures: ({ items, total_Wh }) => [
    ...items.map(({ energy_Wh }, index) => figure.energy('energy', energy_Wh, undefined, index + 1)),
    figure.count('packCount', countOf(items)),
    figure.energy('totalEnergy', total_Wh),
  ],
})

const countOf = (items: readonly Carried[]): number => items.reduce((sum, { count }) => sum + count, 0)
const upward = (energy_Wh: number): number => Math.ceil(energy_Wh * 100 - 1e-6) / 100
