// Sentences as people write them, read with every command there is: the command that is meant, what it was given.

import { describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { createRegistry } from '../../../src/assistant/registry.ts'
import { readQuestion } from '../../../src/notation/question.ts'

const { vocabulary } = createRegistry(commands)

describe('a sentence', () => {
  it.each([
    ['what should I charge my 4s 1500 lipo at', 'current', { pack: '4s 1500 lipo' }],
    ['max current for 1S 300 LiHV', 'current', { pack: '1S 300 LiHV' }],
    ['can i charge a 3s 2200 lipo at 5A', 'time', { pack: '3s 2200 lipo', current: '5A' }],
    ['can I charge my 3s 720 lihv at 2.3V per cell', 'time', { pack: '3s 720 lihv', from: '2.3V per cell' }],
    [
      'can i charge six 3s 720 lihv with a power bank 74Wh',
      'source',
      { count: 'six', pack: '3s 720 lihv', source: 'power bank 74Wh' },
    ],
    ['put my 3S 720 LiHV to storage from 4.35V', 'storage', { pack: '3S 720 LiHV', from: '4.35V' }],
    ['discharge 4s 1500 lipo to storage from full', 'storage', { pack: '4s 1500 lipo', from: 'full' }],
    [
      'how long for 3S 720 LiHV at 1A from 3.7V to storage',
      'time',
      { pack: '3S 720 LiHV', current: '1A', from: '3.7V', to: 'storage' },
    ],
    ['awg for 10A over 2m', 'lead', { current: '10A', length: '2m' }],
    [
      'cells 4s 1500 lipo 3.82 3.83 3.79 3.83',
      'cells',
      { pack: '4s 1500 lipo', volts: '3.82 3.83 3.79 3.83' },
    ],
    ['my cells: 3,82 3,83 3,79 for a 3s 720 lihv', 'cells', { volts: '3,82 3,83 3,79', pack: '3s 720 lihv' }],
    ['hi', 'help', {}],
    ['Hi, what current for a 2s 450 lipo?', 'current', { pack: '2s 450 lipo' }],
  ])('%s', (sentence, command, options) => {
    expect(readQuestion(sentence, vocabulary)).toEqual({ command, options })
  })
})
