// Cautions for the care of packs: discharging, cell readings, resistance.

import { type Caution, cautionsFor, generalCaution } from './cautions.ts'
import type { Situation } from './situation.ts'

export type PackCare = 'discharge' | 'cells' | 'health'

const own: Record<PackCare, readonly Caution[]> = {
  discharge: [
    {
      key: 'watchTheDischarge',
      text: 'Stay with a pack while it is discharged: the load and the pack grow warm. Stop at once where a cell falls away from the others.',
    },
  ],
  cells: [
    {
      key: 'trustTheMeter',
      text: 'Check a reading that decides something with a second meter at the balance plug; a dirty plug reads low.',
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
