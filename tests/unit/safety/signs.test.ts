// What makes a charge wrong is read whatever signs stand around it: "temp=-15C", "[cutoff → 4.6V]", "lowest cell…0.9V".

import { afterAll, beforeAll, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { type Asking, askingOf } from '../../support/ask.ts'
import { turns } from '../../support/cases.ts'

let asking: Asking
beforeAll(async () => {
  asking = await askingOf(commands)
})
afterAll(() => asking.memory.close())

const facts: readonly (readonly [string, string])[] = [
  ['temp', '-15C'],
  ['temperature', '−15 °C'],
  ['resting', '1.9V per cell'],
  ['at rest the pack shows', '5.7V'],
  ['lowest cell', '0.9V'],
  ['current', '30A'],
  ['cutoff', '4.6V per cell'],
  ['pack temperature', '55°C'],
  ['rate', '60C charge'],
]
const around = [
  ...['#=@', '#:@', '(# @)', '[#=@]', '"# @"', '«# @»', '#->@', '# → @', '# ~@', '# ≈@', '#|@', '#/@', '#\\@', '#+@'],
  ...['#…@', '#...@', '**#: @**', '`# @`', '# <@>', '# {@}', '# = (@)', '• # @', '# 🔋@🔋', '# @!!', '#_@', '#&@'],
]

const isTurn = turns()

it.each(facts)('%s %s', async (name, value) => {
  for (const signs of around) {
    const fact = signs.replace('#', name).replace('@', value)
    for (const question of [`${fact} 3S 2200 LiPo charge current`, `how many amps for a 3S 2200 LiPo, ${fact}`]) {
      if (!isTurn()) continue
      const { verdict } = await asking.ask(question)
      expect(verdict, question).not.toBe('go')
    }
  }
})
