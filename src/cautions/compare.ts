// Cautions for packs set side by side.

import { type Caution, generalCaution } from './cautions.ts'

export const compareCautions: readonly [Caution, ...Caution[]] = [
  {
    key: 'notASetting',
    text: 'A current at a C-rate is arithmetic here: neither what the pack may be charged with nor what it can give. Its label says both.',
  },
  generalCaution,
]
