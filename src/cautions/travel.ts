// Cautions for packs on a passenger aircraft.

import type { Caution } from './cautions.ts'

export const travelCautions: readonly [Caution, ...Caution[]] = [
  {
    key: 'cabinOnly',
    text: 'Loose packs go into the cabin, never into checked bags. If your cabin bag is taken from you at the gate, take the packs out of it first.',
  },
  {
    key: 'coverTheTerminals',
    text: 'Cover every plug, the balance plug too, and put each pack into a bag or case of its own, so that nothing can short.',
  },
  {
    key: 'askTheAirline',
    text: 'Ask the airline before you travel: it, the airports and the countries on your way may allow less than this, in number too.',
  },
  {
    key: 'noHurtPackFlies',
    text: 'A pack that is swollen, damaged or recalled does not fly at all.',
  },
]
