// Cautions for leads and wires.

import type { Caution } from './cautions.ts'

export const leadCautions: readonly [Caution, ...Caution[]] = [
  {
    key: 'feelTheLead',
    text: 'Feel the lead and its plugs after some minutes at full current: one that is too warm to hold is too thin or badly joined. Stop and replace it.',
  },
  {
    key: 'fuseTheLead',
    text: 'A lead from a battery can carry a short circuit: fit a fuse that the wire outlasts near the battery, and never work on it while it is connected.',
  },
  {
    key: 'realCopper',
    text: 'These figures are for copper. Copper-clad aluminium of the same gauge resists about 60 % more; a plug or joint adds to it.',
  },
  {
    key: 'leadsOnly',
    text: 'This is for charge leads. Fixed wiring of a building or a vehicle is for the local code and a licensed hand.',
  },
]
