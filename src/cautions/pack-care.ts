// Cautions for the care of packs: discharging, cell readings, parallel boards, resistance.

import { type Caution, cautionsFor, generalCaution } from './cautions.ts'
import type { Situation } from './situation.ts'

export type PackCare = 'parallel' | 'health'

const own: Record<PackCare, readonly Caution[]> = {
  parallel: [
    {
      key: 'measureFirst',
      text: 'Measure every pack before you plug it in: main plugs first, balance plugs after, never a pack with reversed polarity or another cell count. Use a board with a fuse for each pack.',
    },
    {
      key: 'oneFailsAll',
      text: 'On a board a bad cell is fed by all the other packs: leave out any pack you are not sure of, and stay in sight of the board.',
    },
  ],
  health: [
    {
      key: 'resistanceIsNotAll',
      text: 'A low resistance does not make a pack sound: one that is swollen, dented or loses charge at rest is retired whatever it reads.',
    },
  ],
}

const mostCautions = 4

/** The pressing ones that the situation calls for, then the topic's own, then the general one. */
export function careCautions(topic: PackCare, situation: Situation): readonly [Caution, ...Caution[]] {
  const pressing = cautionsFor(situation).filter(({ key }) => urgent.has(key))
  const [first = generalCaution, ...rest] = [...pressing, ...own[topic]]
  return [first, ...rest.slice(0, mostCautions - 2), generalCaution]
}

const urgent = new Set(['retire', 'keepAway', 'aboveAdvised', 'lowCell', 'warmItFirst', 'letItCool'])
