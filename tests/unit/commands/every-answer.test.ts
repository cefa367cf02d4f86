// What holds for every command that works something out: its examples, its own canonical question, any details.

import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import { commands as all } from '../../../commands/index.ts'
import type { Option } from '../../../src/assistant/command.ts'
import { shelfOf } from '../../../src/assistant/naming/shelf.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { type Asking, askingOf, member } from '../../support/ask.ts'
import { cases, partOf } from '../../support/cases.ts'

const bench = ['charge', 'care', 'supply']
const commands = all.filter(command => bench.includes(shelfOf(command).family))

let asking: Asking
beforeAll(async () => {
  asking = await askingOf(all)
})

async function answered(question: string): Promise<Reply> {
  const reply = await asking.ask(question)
  expect(asking.faults).toEqual([])
  expect(reply.problem).toBeUndefined()
  return reply
}

describe.each(commands)('$name', command => {
  it.each(command.examples)('answers its example with working, each figure once: %s', async example => {
    const reply = await answered(example)
    expect(reply.command).toBe(command.name)
    expect(reply.figures.length + reply.working.length).toBeGreaterThan(0)
    // The sum is what energy answers.
    if (reply.verdict !== 'do not charge' && command.name !== 'energy') expect(reply.working.length).toBeGreaterThan(0)
    expect(new Set(reply.figures.map(({ key }) => key)).size).toBe(reply.figures.length)
  })

  it.each(command.examples)('gives the same answer to its own canonical question: %s', async example => {
    const reply = await answered(example)
    const again = await answered(reply.question ?? '')
    expect(again.headline).toBe(reply.headline)
    expect(again.figures).toEqual(reply.figures)
  })

  it.each(command.examples)('asks follow-ups that are answered: %s', async example => {
    for (const { question } of (await answered(example)).followUps) await answered(question)
  })
})

/** At the ends of what the notation reads, by kind of value. */
const extremes: Readonly<Record<string, readonly string[]>> = {
  pack: ['14S8P 60Ah LiFe 0.01C', '1S 20mAh LiPo 1Ω', '6S 5000 LiHV 10C', '2S 2600 Li-ion'],
  packs: ['100x 14S8P 60Ah LiFe 50kg', '1S 20mAh LiPo 0.1g; 1S 20mAh LiPo 0.1g', '3S 720 LiHV; 3S 720 LiHV'],
  'session packs': [
    '60x 1S 20mAh LiPo',
    '3S 720 LiHV at 0V per cell; 3S 720 LiHV at 4.5V per cell; 4S 720 LiHV at full',
    '2x 14S8P 60Ah LiFe at empty; 1S 450 LiHV swollen',
    '2x 3S 850 LiPo at 3.8V per cell; 3S 850 LiPo at 50%',
  ],
  'session chargers': ['6x 0.01A 0.5W', '60A 1-1S 90-91V 50%; 0.5/1/2/4A 4.10/4.20V', '0.1-10A by 0.1 200W 6S'],
  'session sources': ['100V 60A', '1S 20mAh LiPo at empty; car 1A engine off', 'power bank 74Wh at 1%; PD 15W'],
  charger: ['60A 1-1S 90-91V 50%', '0.01A 0.5W', '0.5/1/2/4A 4.10/4.20V', '1A 3.60V 14-14S'],
  source: ['PD 15W', 'PD 240W', 'car 1A engine off', '1S 20mAh LiPo', '100V 60A'],
  from: ['0V per cell', '4.5V per cell', '2.49V per cell', '4.3V per cell', '0%', '100%', 'empty', '3.84V per cell'],
  to: ['0V per cell', '4.5V per cell', '3.6V per cell', '100%'],
  duration: ['1s', '8784h'],
  count: ['1', '100'],
  current: ['0.01A', '60A'],
  voltage: ['0V', '0.01V', '100V'],
  capacity: ['0.02Ah', '60Ah'],
  power: ['0.5W', '3000W'],
  energy: ['0.1Wh', '5000Wh'],
  percent: ['0%', '100%', '30%'],
  temperature: ['-50°C', '150°C'],
  resistance: ['0.01mΩ', '10Ω'],
  drop: ['0.1%', '50%', '0.01V', '20V'],
  length: ['0.001m', '100m'],
  gauge: ['AWG 0', 'AWG 40'],
  rate: ['0.01C', '20C'],
  cells: ['14S LiFe', 'LiHV', '1S Li-ion'],
  cutoffs: ['2.5/4.5V', '4.20V'],
  'cell volts': ['0 0 0', '10V', '3.3 3.3 3.3', '4.35 4.36', '2.4 3.8 3.8', '3.8 0 7.6'],
  'cell resistances': ['0.01mΩ', '1000mΩ', '5 6 20 mΩ'],
  load: ['rest 0V', '0.01A 100V', '60A 1V'],
}
const nonsense = fc.constantFrom('NaN', '1e308', '-5A', '🔋', '1,234', 'full full', ';;', '')

/** A value of the option's kind, mostly one that can be read. */
const detailOf = ({ kind }: Option): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 12, arbitrary: fc.constantFrom(kind.example, ...kind.complete(''), ...(extremes[kind.name] ?? [])) },
    { weight: 1, arbitrary: nonsense },
  )

describe('any details', () => {
  it.each(commands)('give $name an answer or a problem, with cautions, never a fault', async command => {
    const entries = Object.entries(command.takes)
    const options = fc.record(Object.fromEntries(entries.map(([name, option]) => [name, detailOf(option)])), {
      requiredKeys: entries.filter(([, { required }]) => required).map(([name]) => name),
    }) as fc.Arbitrary<Record<string, string>>
    let answers = 0
    await fc.assert(
      fc.asyncProperty(options, async given => {
        const reply = await asking.assistant.answer({ command: command.name, options: given }, member)
        expect(asking.faults).toEqual([])
        expect(reply.cautions.length).toBeGreaterThan(0)
        expect(reply.figures.filter(({ value }) => !Number.isFinite(value))).toEqual([])
        expect(`${reply.headline} ${reply.working.join(' ')}`).not.toMatch(/NaN|Infinity|∞|undefined/)
        if (!reply.problem) answers += 1
      }),
      cases(600),
    )
    // Not about problems alone.
    expect(answers).toBeGreaterThan(partOf(40))
  })
})
