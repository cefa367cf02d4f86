// Ways past the rules of sources and of dangers told that were open once, each closed by a test through the assistant.

import { describe, expect, it } from 'vitest'
import { openLayer } from '../../../src/assistant/layers/opened.ts'
import { emergencies } from '../../../src/charging/situation/dangers.ts'
import { english } from '../../../src/ground/locale.ts'
import { dangerWords } from '../../../src/handbook/rules/dangers.words.ts'
import { askTold } from '../../support/ask-told.ts'
import { folded, shortestTextsOf } from '../../support/rendered-text.ts'
import { allDangers, allDoubts } from '../../support/situations.ts'

const { ask, said } = await askTold()

describe('a source below what the charger needs', () => {
  const charger = '0.5/1/2A 12.24-20V'
  it.each(['car 10A 9V', 'car 10A engine off rest 9V', '9V 10A', 'car 10A engine running', 'USB 5V 2A'])(
    '%s feeds no charger that starts at 12.24 V',
    async source => {
      for (const question of [
        `current pack: 3S 720 LiHV charger: ${charger} source: ${source}`,
        `time pack: 3S 720 LiHV charger: ${charger} source: ${source}`,
        `source source: ${source} pack: 3S 720 LiHV charger: ${charger}`,
        `supply source: ${source} charger: ${charger}`,
        `supply source: ${source} pack: 3S 720 LiHV charger: ${charger}`,
      ])
        expect((await ask(question)).verdict, question).toBe('do not charge')
      const plan = await ask(`plan packs: 2x 3S 720 LiHV chargers: ${charger} sources: ${source}`)
      expect(plan.verdict).toBe('do not charge')
    },
  )
})

describe('nothing cuts what must be said', () => {
  const locale = english('.')
  const lines = dangerWords(locale) as unknown as Readonly<Record<string, () => readonly string[]>>

  it('of all dangers at once the emergencies are named on every surface, and all else in the care', async () => {
    const reply = await ask('time pack: 3S 720 LiHV from: 2.8V per cell temperature: 3°C current: 20A', {
      dangers: allDangers,
      doubts: allDoubts,
    })
    expect(reply.verdict).toBe('do not charge')
    for (const [surface, text] of Object.entries(shortestTextsOf(reply)))
      for (const danger of emergencies) expect(text, surface).toContain(folded(lines[danger]?.()[0] ?? '?'))
    const care = openLayer(reply, 'care').lines.map(folded).join('\n')
    for (const danger of allDangers)
      if (!emergencies.includes(danger)) expect(care).toContain(folded(lines[danger]?.()[0] ?? '?'))
  })

  it('of all that a charge may still be done with each line is said on every surface', async () => {
    const musts = ['tooLow', 'crashed', 'storedFull', 'drainsSource', 'sealedBox', 'loose', 'disposal'] as const
    const reply = await ask('time pack: 6S 20000 LiPo 50C from: 2.8V per cell temperature: 3°C current: 0.5A', {
      dangers: musts,
      doubts: allDoubts,
    })
    expect(reply.verdict).not.toBe('go')
    for (const [surface, text] of Object.entries(shortestTextsOf(reply)))
      for (const danger of musts)
        for (const line of lines[danger]?.() ?? []) expect(text, surface).toContain(folded(line))
  })
})

describe('a pack without a charger between it and its source', () => {
  it.each([
    'current pack: 3S 720 LiHV source: 12V 5A',
    'time pack: 3S 720 LiHV source: car 10A',
    'source source: 4S 5000 Li-ion pack: 3S 720 LiHV',
    'supply source: PD 65W pack: 3S 720 LiHV',
    'parallel packs: 2x 3S 720 LiHV at 3.8V per cell',
    'lend pack: 3S 720 LiHV power: 5W',
  ])('is refused where the words tell of it: %s', async question => {
    const reply = await ask(question, { dangers: ['noCharger'], doubts: [] })
    expect(reply.verdict).toBe('do not charge')
    expect(reply.headline).toMatch(/^Never connect a pack to a supply/)
  })

  it.each([
    'can I charge my 3S 720 LiHV straight from a 12V supply without a charger',
    'how long for a 3s 720 lihv hooked straight to a 13V solar panel, no charger',
  ])('is refused in plain words: %s', async question => {
    expect((await said(question)).verdict).toBe('do not charge')
  })
})

describe('a danger among the details of a question in notation', () => {
  it.each([
    'time pack: 3S 720 LiHV swollen',
    'time my puffed pack: 3S 720 LiHV',
    'current pack: 3S 720 LiHV puffed charger: 0.5/1/2A',
    'storage pack: 3S 720 LiHV dented from: full',
    'time pack: 3S 720 LiHV from: wet',
    'parallel packs: 3S 720 LiHV leaking at 3.8V; 3S 720 LiHV at 3.8V',
    'plan packs: 6S 1300 LiPo smoking chargers: 1A',
    'travel packs: 2x 3S 720 LiHV swollen',
  ])('is no word that cannot be placed: %s', async question => {
    const reply = await said(question)
    expect(reply.verdict).toBe('do not charge')
    expect(reply.figures).toEqual([])
  })

  it('names of gear are names', async () => {
    expect((await said('kit save name: fire pack: 3S 720 LiHV')).verdict).not.toBe('do not charge')
  })
})
