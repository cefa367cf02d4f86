// The safety invariants once more, from a question's text to its reply: nothing on the way may loosen them.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/assistant/reply.ts'
import { deferenceIn } from '../../../src/assistant/reply.words.ts'
import { english } from '../../../src/ground/locale.ts'
import { writeQuantity } from '../../../src/language/quantities/quantity.ts'
import { writeCharger } from '../../../src/language/things/charger.ts'
import { writePack } from '../../../src/language/things/pack.ts'
import { writeSource } from '../../../src/language/things/source.ts'
import { someCharger, somePack, someRest_V, someSource, someTemperature_C } from '../../support/arbitraries.ts'
import { askingOf } from '../../support/ask.ts'
import { cases, partOf } from '../../support/cases.ts'
import { commandNamed } from '../../support/commands.ts'
import { designOf } from '../../support/design.ts'

const deference = deferenceIn(english('.'))

const current = commandNamed('current')
const time = commandNamed('time')
const source = commandNamed('source')

const slack = 1 + 1e-9

const { ask, faults } = await askingOf([current, time, source])

/** Values as a pilot writes them: a few digits. */
const rounded = (value: number) => Number(value.toPrecision(3))

const someQuestion = fc
  .record({
    command: fc.constantFrom('current', 'time', 'source'),
    pack: somePack.map(pack => ({ ...pack, capacity_Ah: Math.max(0.02, rounded(pack.capacity_Ah)) })),
    charger: fc.option(someCharger, { nil: undefined }),
    source: someSource,
    from_V: fc.option(someRest_V.map(rounded), { nil: undefined }),
    to: fc.constantFrom('full', 'storage', '80%', '4.2V per cell', undefined),
    temperature_C: fc.option(someTemperature_C.map(Math.round), { nil: undefined }),
    asked_A: fc.option(fc.double({ min: 0.05, max: 60, noNaN: true }).map(rounded), { nil: undefined }),
  })
  .map(asked => {
    const { command, pack, charger, from_V, to, temperature_C, asked_A } = asked
    const parts = [
      command,
      `pack: ${writePack(pack)}`,
      `source: ${writeSource(asked.source)}`,
      charger && `charger: ${writeCharger(charger)}`,
      from_V !== undefined && `from: ${writeQuantity(from_V, 'voltage')} per cell`,
      to && `to: ${to}`,
      temperature_C !== undefined && `temperature: ${writeQuantity(temperature_C, 'temperature')}`,
      command === 'time' && asked_A !== undefined && `current: ${writeQuantity(asked_A, 'current')}`,
    ]
    return { ...asked, text: parts.filter(Boolean).join(' ') }
  })

const figure = (reply: Reply, key: string) => reply.figures.find(one => one.key === key)?.value

describe('every reply to a question about charging', () => {
  it('is safe, careful and no fault, whatever was asked', async () => {
    const verdicts: string[] = []
    await fc.assert(
      fc.asyncProperty(someQuestion, async ({ text, pack, from_V = 3.7, temperature_C = 25 }) => {
        const reply = await ask(text)
        expect(faults).toEqual([])
        expect(reply.cautions.length).toBeGreaterThan(0)
        expect(reply.deference).toBe(deference)
        if (reply.problem) return
        verdicts.push(reply.verdict ?? 'none')
        for (const { value, low = value, high = value } of reply.figures) {
          expect([value, low, high].every(Number.isFinite)).toBe(true)
        }
        if (from_V < designOf(pack.chemistry).damage_V || temperature_C < 0 || temperature_C > 45) {
          expect(reply.verdict).toBe('do not charge')
        }
        if (reply.verdict === 'do not charge') return
        const set_A = figure(reply, 'setCurrent') ?? Number.NaN
        const { chemistry, capacity_Ah, labelRate_C = designOf(chemistry).highest_C } = pack
        const limit_C = reply.command === 'time' ? labelRate_C : Math.min(labelRate_C, designOf(chemistry).highest_C)
        expect(set_A).toBeLessThanOrEqual(limit_C * capacity_Ah * slack)
        expect(figure(reply, 'cutoffPerCell')).toBeLessThanOrEqual(designOf(chemistry).full_V * slack)
      }),
      cases(2_000),
    )
    expect(verdicts.length).toBeGreaterThan(partOf(1_000))
    expect([...new Set(verdicts)].sort()).toEqual(['do not charge', 'go', 'go with care'])
  })
})
