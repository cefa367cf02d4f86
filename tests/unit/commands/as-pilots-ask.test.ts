// Sentences as people write them, read with every command there is: the command that is meant, what it was given.

import { describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { createRegistry } from '../../../src/assistant/registry.ts'
import { readQuestion } from '../../../src/language/sentence/question.ts'
import { problemOf } from '../notation/problem-of.ts'

const { vocabulary } = createRegistry(commands)

/** A sentence that must be asked about: what is said, and the word that is pointed at. */
const asked = [
  ['charge 4s 1500 lipo at 1A or 2A', 'one current or the steps', '1A or 2A'],
  ['3s 720 lihv 20W 12mΩ', 'do not see what you want to know', '3s 720 lihv 20W 12mΩ'],
  ['charge my 3s 720 lihv 3.7V', 'what 3.7V is of', '3.7V'],
  ['what current nimh 3000', 'do not advise on nimh', 'nimh'],
  ['my lipo got wet', 'Do not charge', 'got wet'],
  ['it is at 5 and smoking', 'call the fire service', 'smoking'],
  ['charge 6s 5000 lipo 22.2V at 5A', 'of a supply, or of the pack', '22.2V at 5A'],
  ['3s 2200 lipo 11.1V how long', 'what 11.1V is of', '11.1V'],
  ['lipo has a dent', 'Do not charge', 'dent'],
  ['charge 5', 'cannot place "5"', '5'],
] as const

describe('a sentence', () => {
  it.each(asked)('is asked about: %s', (sentence, what, token) => {
    const problem = problemOf(() => readQuestion(sentence, vocabulary))
    expect(problem.what).toContain(what)
    expect(problem.token).toBe(token)
  })

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
    ['cells 4s 1500 lipo 3.82 3.83 3.79 3.83', 'cells', { pack: '4s 1500 lipo', volts: '3.82 3.83 3.79 3.83' }],
    ['my cells: 3,82 3,83 3,79 for a 3s 720 lihv', 'cells', { volts: '3,82 3,83 3,79', pack: '3s 720 lihv' }],
    ['hi', 'hello', {}],
    ['thanks!', 'hello', {}],
    ['help me', 'help', {}],
    ['3s 2200 lipo thanks', 'current', { pack: '3s 2200 lipo' }],
    ['3s 720 lihv', 'current', { pack: '3s 720 lihv' }],
    ['is 3A ok for 3s 1300 lipo', 'time', { current: '3A', pack: '3s 1300 lipo' }],
    ['charge at 10C 4s 1500 lipo', 'time', { current: '10C', pack: '4s 1500 lipo' }],
    ['charge 3S 720 LiHV to storage at 1A', 'time', { pack: '3S 720 LiHV', to: 'storage', current: '1A' }],
    ['how many 4s 1500 lipo can i charge from a PD 65W', 'source', { pack: '4s 1500 lipo', source: 'PD 65W' }],
    ['can i charge 3s 1300 lipo from a 3s 5000 lipo', 'source', { pack: '3s 1300 lipo', source: '3s 5000 lipo' }],
    ['cells 3.82 3.83 3.79 3.83', 'cells', { volts: '3.82 3.83 3.79 3.83' }],
    ['cells lipo 4.19 4.20 4.05', 'cells', { chemistry: 'lipo', volts: '4.19 4.20 4.05' }],
    [
      'cells 4s 1500 lipo 4.18 4.19 4.02 4.19 at full',
      'cells',
      { when: 'full', pack: '4s 1500 lipo', volts: '4.18 4.19 4.02 4.19' },
    ],
    ['cells 3s lipo 4.19 4.20 4.05', 'cells', { chemistry: '3s lipo', volts: '4.19 4.20 4.05' }],
    ['cells 3.8 3.8 0 lipo', 'cells', { volts: '3.8 3.8 0', chemistry: 'lipo' }],
    ['my cells: 4.18/4.20/4.19 3s 850 lipo', 'cells', { volts: '4.18/4.20/4.19', pack: '3s 850 lipo' }],
    ['3s 850 lipo @ 3.7v/cell what amps', 'current', { pack: '3s 850 lipo', from: '3.7v/cell' }],
    ['is 3.2 3.7 3.7 ok', 'cells', { volts: '3.2 3.7 3.7' }],
    ['what voltage should I store 3s lipo at', 'storage', { chemistry: '3s lipo' }],
    ['what is storage for 6s lipo', 'storage', { chemistry: '6s lipo' }],
    ['put my 2s 450 lipo away', 'storage', { pack: '2s 450 lipo' }],
    ['percent lipo 3,8', 'percent', { chemistry: 'lipo', at: '3,8' }],
    ['2s lipo at 8,1V', 'percent', { chemistry: '2s lipo', at: '8,1V' }],
    ['what cutoff for 3s lihv', 'trim', { chemistry: '3s lihv' }],
    ['can I charge lipo to 4.35', 'trim', { chemistry: 'lipo', to: '4.35' }],
    ['which cutoff for li-ion from 4.20/4.35V', 'trim', { chemistry: 'li-ion', cutoffs: '4.20/4.35V' }],
    [
      'my charger shows 4.20 but the meter says 4.23, lipo',
      'trim',
      { shown: '4.20', measured: '4.23', chemistry: 'lipo' },
    ],
    ['is awg 16 ok for 10A over 2m', 'lead', { gauge: 'awg 16', current: '10A', length: '2m' }],
    ['can I take 4x 6S 5000 lipo on a plane', 'travel', { packs: '4x 6S 5000 lipo' }],
    ['which is lighter 3s 720 lihv 45g or 3s 850 lipo 68g', 'compare', { packs: '3s 720 lihv 45g; 3s 850 lipo 68g' }],
    ['can I parallel charge a 3s and a 4s', 'parallel', { packs: '3s; 4s' }],
    [
      'plan 4x 3S 720 LiHV at 3.7V on a 0.5/1/2/4A charger by 2h',
      'plan',
      { packs: '4x 3S 720 LiHV at 3.7V', chargers: '0.5/1/2/4A charger', by: '2h' },
    ],
    ['smallest usb supply for 3S 720 LiHV at 2A', 'supply', { pack: '3S 720 LiHV', current: '2A' }],
    ['charge my phone from a 4S 5000 li-ion with 10W', 'lend', { pack: '4S 5000 li-ion', power: '10W' }],
    ['health 4s 1500 lipo 5 5 6 5 mΩ', 'health', { pack: '4s 1500 lipo', resistance: '5 5 6 5 mΩ' }],
    ["what's C rate", 'lesson read', { lesson: 'c-rate' }],
    ['teach me about balancing', 'lesson read', { lesson: 'balance' }],
    ['can i charge without balance lead', 'lesson read', { lesson: 'balance' }],
    ['can i leave it charging overnight', 'rules', {}],
    ['Hi, what current for a 2s 450 lipo?', 'current', { pack: '2s 450 lipo' }],
  ])('%s', (sentence, command, options) => {
    expect(readQuestion(sentence, vocabulary)).toEqual({ command, options })
  })
})
