// What a supply can give this charger, by cell count; or the smallest supply that carries a setting.

import { defineCommand, optional } from '../../src/assistant/old-command.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import { Problem } from '../../src/ground/problem.ts'
import {
  chargerKind,
  chemistryKind,
  currentKind,
  packKind,
  sourceKind,
} from '../../src/language/kinds/values.ts'
import { suppliedAnswer } from './supply-given.ts'
import { neededAnswer } from './supply-needed.ts'

export const supply = defineCommand({
  name: 'supply',
  summary: 'What a supply gives a charger by cell count, or the smallest supply for a setting.',
  options: {
    source: optional(sourceKind, {
      description: 'the supply; left out to find one for a pack',
      phrase: text => text,
    }),
    charger: optional(chargerKind, {
      description: 'what it feeds',
      phrase: text => `for a charger with ${text}`,
    }),
    pack: optional(packKind, {
      description: 'the pack that is to be charged',
      phrase: text => `to charge ${text}`,
    }),
    chemistry: optional(chemistryKind, {
      description: `of the packs, where none is named; ${chemistries[0].name} when not said`,
    }),
    current: optional(currentKind, {
      description: 'the charge current wanted',
      phrase: text => `at ${text}`,
    }),
    cable: optional(currentKind, {
      description: 'what the USB-C cable carries, 3 A or 5 A',
      phrase: text => `over a ${text} cable`,
    }),
  },
  examples: [
    'supply source: PD 65W charger: 0.1-10A by 0.1 200W 6S 10-30V',
    'supply source: PD 100W charger: 0.5/1/2/4A 80W 1-4S 9-20V cable: 3A',
    'supply pack: 4S 1500 LiPo current: 2A charger: 0.1-10A by 0.1 200W 6S 10-30V',
  ],
  plainWords: [
    'usb supply',
    'usb charger',
    'give the',
    'give my',
    'smallest supply',
    'what supply',
    'which supply',
    'power supply',
    'how big a supply',
    'supply for',
  ],
  answer: (inputs, context) => {
    const { source, pack } = inputs
    if (source) return suppliedAnswer({ ...inputs, source }, context)
    if (pack) return neededAnswer({ ...inputs, pack }, context)
    throw new Problem({
      what: 'I need the supply, or the pack that it is to charge.',
      expected: 'source: a supply to see what it gives, or pack: to find one',
      example: 'supply pack: 4S 1500 LiPo current: 2A',
    })
  },
})
