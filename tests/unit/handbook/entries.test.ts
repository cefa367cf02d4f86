// The handbook as data: its form, and that nothing in it goes against what the envelope says.

import { beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { commands } from '../../../commands/index.ts'
import { judge } from '../../../src/charging/envelope/judge.ts'
import { knownOf } from '../../../src/charging/envelope/limits/facts.ts'
import { limits } from '../../../src/charging/envelope/limits/index.ts'
import { mostRise_K, wireRise_K } from '../../../src/charging/leads/wire.ts'
import { spreads } from '../../../src/charging/setting/balancing.ts'
import { type Danger, dangers } from '../../../src/charging/situation/dangers.ts'
import { situationOf } from '../../../src/charging/situation/situation.ts'
import { chemistries, liFe, lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import { leadAcidLimits } from '../../../src/charging/things/lead-acid.ts'
import { airLimits } from '../../../src/charging/upkeep/transport.ts'
import { askedOf, wordedBy } from '../../../src/handbook/asked.ts'
import { handbook } from '../../../src/handbook/entries.ts'
import type { HandbookEntry } from '../../../src/handbook/entry.ts'
import { asksLeave } from '../../../src/handbook/leave.ts'
import { type Asking, askingOf } from '../../support/ask.ts'

const line = z.string().trim().min(5).max(240)

const schema = z.array(
  z.strictObject({
    id: z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/),
    // On a button and in a list of choices.
    title: z.string().min(5).max(80),
    questions: z.array(line).min(6).max(60),
    answer: z.tuple([line, line]),
    why: line,
    do: line,
    source: z.string().min(5),
    command: z.string().optional(),
    keywords: z.array(z.string().min(1)).optional(),
    dangers: z
      .array(z.enum(Object.keys(dangers) as [Danger, ...Danger[]]))
      .min(1)
      .optional(),
  }),
)

const entryNamed = (id: string): HandbookEntry => {
  const found = handbook.find(entry => entry.id === id)
  if (!found) throw new Error(`the handbook has no entry "${id}"`)
  return found
}

const textOf = ({ answer, why, do: deed }: HandbookEntry): string => [...answer, why, deed].join(' ')

describe('the entries', () => {
  it('have the form of the schema', () => {
    expect(schema.parse(handbook)).toEqual(handbook)
    expect(handbook.length).toBeGreaterThan(150)
  })

  it.each(['id', 'title', 'do'] as const)('share no %s', key => {
    expect(new Set(handbook.map(entry => entry[key])).size).toBe(handbook.length)
  })

  it('share no question', () => {
    const all = handbook.flatMap(({ questions }) => questions.map(question => question.toLowerCase()))
    expect(all.filter((one, index) => all.indexOf(one) !== index)).toEqual([])
  })

  it('speak in short sentences', () => {
    const words = handbook.flatMap(entry =>
      textOf(entry)
        .split(/(?<=[.!?])\s+/)
        .map(sentence => sentence.split(/\s+/).length),
    )
    expect(words.reduce((sum, count) => sum + count, 0) / words.length).toBeLessThan(14)
  })
})

describe('what the envelope refuses', () => {
  const house = {}
  const around = { house, dangers: [], doubts: [] }
  const withDangers = handbook.filter(entry => entry.dangers)

  it.each(withDangers.map(entry => [entry.id, entry] as const))('%s: leave for it is judged there', (_, entry) => {
    const question = wordedBy({ entry, nearest: [], dangers: entry.dangers ?? [] })
    const asked = askedOf(question)
    expect(asked.entry?.id).toBe(entry.id)
    expect(asked.dangers).toEqual(entry.dangers)
    const { verdict } = judge(situationOf({ act: 'look', dangers: entry.dangers }, around))
    expect(verdict).not.toBe('go')
  })

  it('is advised by no entry: a forbidden thing stands only in a sentence that forbids it', () => {
    const forbidden =
      /\b(?:salt water|pierc\w+|reviv\w+|overnight|unattended|nimh mode|jump.start|squeeze|freezer|bin|straight on|through the night)\b/i
    const forbids = /\b(?:no|not|never|nothing|nobody|none|without|before)\b/i
    const advised = handbook.flatMap(entry =>
      [...entry.answer, entry.do]
        .flatMap(text => text.split(/(?<=[.!?;:])\s+/))
        .filter(sentence => forbidden.test(sentence) && !forbids.test(sentence))
        .map(sentence => `${entry.id}: ${sentence}`),
    )
    expect(advised.filter(one => !harmless.has(one))).toEqual([])
  })

  /** They hold such a word for another thing. */
  const harmless: ReadonlySet<string> = new Set([
    'fridge: a freezer is wrong.',
    'pierce-press: salt water eats the leads and leaves the cells charged.',
    'damaged-what: swollen, dented, cut, pierced, crushed, wet inside, leaking, smelling, burnt, hot by itself, or with a hurt lead.',
    'revive: NiMH mode, another battery or a supply on it are the ways in which it burns.',
    'inverter: a DC charger straight on the battery loses less.',
  ])
})

describe('the numbers that entries name', () => {
  const volts = (value_V: number): string => value_V.toFixed(2).replace(/0$/, '')
  const has = (id: string, ...numbers: readonly (string | number)[]) => {
    for (const number of numbers) expect(textOf(entryNamed(id)), id).toContain(String(number))
  }

  it('are those of the chemistries', () => {
    for (const { name, full_V } of chemistries) has('how-full-known', `${name} ${full_V.value.toFixed(2)} V`)
    for (const { storage_V } of [lipo, liIon, liFe]) has('storage-volts', `${volts(storage_V.value)} V`)
    expect(lihv.storage_V.value).toBe(lipo.storage_V.value)
    has('how-low', lipo.restFloor_V.value, lipo.loadFloor_V.value, `${volts(liIon.restFloor_V.value)} V`)
    has('pack-source', ...[lipo, liFe].map(({ loadFloor_V }) => `${volts(loadFloor_V.value)} V`))
    has('revive', lipo.damage_V.value, liFe.damage_V.value.toFixed(1), lipo.precharge_V.value.toFixed(1))
    has('charge-c-label', `${lipo.recommendedRate_C.value}C`, `Li-ion at ${liIon.recommendedRate_C.value}C`)
  })

  it('are those of the limits', () => {
    const bands = lipo.temperatureBands.value
    has('cold-charge', `${bands[1]?.to_C} to ${bands[2]?.to_C} °C`, `${bands[0]?.from_C} to ${bands[1]?.to_C} °C`)
    has('hot-weather', `${bands[2]?.to_C} °C`)
    const known = knownOf(situationOf({ act: 'board' }, { house: {}, dangers: [], doubts: [] }), {})
    has('cells-apart', ...Object.values(spreads.value).map(value => `${value} V`))
    has('parallel-what', `${limits.boardApart.than(known)} V`)
  })

  it('of leads keep every lead within the warmth that it may have', () => {
    const leads = textOf(entryNamed('gauge')) + textOf(entryNamed('gauge-thick'))
    const told = [...leads.matchAll(/AWG (\d+)(?: \([^)]+\))? (?:to|for) (?:about )?(\d+) A/g)]
    expect(told).toHaveLength(7)
    for (const [, gauge, amps] of told)
      expect(wireRise_K(Number(gauge), Number(amps), 20)).toBeLessThan(mostRise_K.value)
  })

  it('are those of sources and aeroplanes', () => {
    const { starter, 'deep-cycle': deepCycle } = leadAcidLimits
    has('car-battery', `${starter.restFloor_V.value} V`, `${starter.loadFloor_V.value} V`)
    has('agm-depth', `${deepCycle.restFloor_V.value} V`, `${deepCycle.loadFloor_V.value} V`)
    has('wh-aeroplane', `${airLimits.value.free_Wh} Wh`, `${airLimits.value.approved_Wh} Wh`)
  })
})

describe('the questions that entries lead to', () => {
  let asking: Asking
  beforeAll(async () => {
    asking = await askingOf(commands)
  })

  const leading = [...new Set(handbook.flatMap(({ command }) => command ?? []))]
  it.each(leading)('is answered and not refused: %s', async question => {
    const reply = await asking.ask(question)
    expect(asking.faults).toEqual([])
    expect(reply.problem).toBeUndefined()
    expect(reply.verdict).not.toBe('do not charge')
  })
})

describe('asking leave', () => {
  it.each([
    'may i charge overnight',
    'can we leave it on while we eat',
    'is it ok to charge in the car',
    'charging on the bed, allowed?',
    'what if i leave it on all night',
    'put it in salt water, yes or no',
    '¿puedo cargar en la cama?',
    'darf ich nachts laden',
  ])('it is: %s', text => expect(asksLeave(text)).toBe(true))

  it.each([
    'why may i not charge overnight',
    'what is a c rate',
    'why not',
    'how long does it take',
    'which plug goes first',
    'connection break on channel 3',
  ])('it is not: %s', text => expect(asksLeave(text)).toBe(false))
})
