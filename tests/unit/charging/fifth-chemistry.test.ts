// A fifth chemistry is one more entry of the list: every command reads, writes and serves it.

import { registerHooks } from 'node:module'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { Figure, Reply } from '../../../src/assistant/reply.ts'
import type { Chemistry } from '../../../src/charging/things/chemistry.ts'
import type { Asking } from '../../support/ask.ts'

// The program once more, beside the one that other tests share: its modules are marked, and its list is the longer one.
const mark = '?five'
const list = new URL('../../../src/charging/things/chemistries.ts', import.meta.url).href
const longer = new URL('../../support/fifth-chemistry.ts', import.meta.url).href
const hooks = registerHooks({
  resolve(specifier, context, next) {
    const found = next(specifier, context)
    if (!context.parentURL?.endsWith(mark) || !found.url.endsWith('.ts')) return found
    const isOfList = context.parentURL === longer + mark
    return { ...found, url: (found.url === list && !isOfList ? longer : found.url) + mark }
  },
})
const again = (path: string) => import(new URL(path, import.meta.url).href + mark)

let asking: Asking
let lto: Chemistry
let completions: typeof import('../../../src/language/kinds/completions.ts').completions
let values: typeof import('../../../src/language/kinds/values.ts')
let readChemistry: typeof import('../../../src/language/parts/chemistry.ts').readChemistry

beforeAll(async () => {
  const { commands } = await again('../../../commands/index.ts')
  asking = await (await again('../../support/ask.ts')).askingOf(commands)
  lto = (await again('../../support/fifth-chemistry.ts')).lto
  completions = (await again('../../../src/language/kinds/completions.ts')).completions
  values = await again('../../../src/language/kinds/values.ts')
  readChemistry = (await again('../../../src/language/parts/chemistry.ts')).readChemistry
})
afterAll(() => hooks.deregister())

async function answered(question: string): Promise<Reply> {
  const reply = await asking.ask(question)
  expect(asking.faults).toEqual([])
  expect(reply.problem).toBeUndefined()
  expect(told(reply)).not.toMatch(/undefined|NaN|\[object/)
  return reply
}

const told = ({ headline, figures, working, cautions, assumed, followUps }: Reply): string =>
  [
    headline,
    ...figures.map(({ label, text }) => `${label} ${text}`),
    ...working,
    ...cautions.map(({ text }) => text),
    ...assumed,
    ...followUps.map(({ question }) => question),
  ].join('\n')

const figure = (reply: Reply, key: string): Figure | undefined => reply.figures.find(one => one.key === key)

describe('a chemistry of its own', () => {
  it.each(['LTO', 'lto', 'lithium titanate', 'Lithium-Titanate', 'li titanate'])('is read as %j', text => {
    expect(readChemistry(text)).toBe(lto)
  })

  it('is written, completed and named among the others', () => {
    const pack = { chemistry: lto, series: 6, parallel: 1, capacity_Ah: 1.3 }
    expect(values.packKind.write(pack)).toBe('6S 1300mAh LTO')
    expect(values.packKind.read('6S 1300mAh LTO', {}).value.chemistry).toBe(lto)
    expect(completions('pack', '6S 1300 L')).toContain('6S 1300 LTO')
    expect(values.chemistryKind.complete('l')).toContain('LTO')
    expect(values.cellsKind.complete('LT')).toEqual(['LTO'])
    expect(() => readChemistry('NiMH')).toThrow('do not know')
  })

  it('is set to 2.80 V per cell and to 1C', async () => {
    const reply = await answered('current pack: 6S 1300 LTO charger: 0.1-10A by 0.1')
    expect(reply.verdict).toBe('go')
    expect(figure(reply, 'cutoffPerCell')).toMatchObject({ value: 2.8, text: '2.80 V' })
    expect(figure(reply, 'setCurrent')).toMatchObject({ value: 1.3 })
    expect(told(reply)).toContain('2.80 V')
    expect(told(reply)).toContain('Set the charger to LTO:')
  })

  it('is asked for in plain words', async () => {
    const reply = await answered('what current for a 6s 1300 lithium titanate at 2.2V per cell')
    expect(reply.command).toBe('current')
    expect(figure(reply, 'cutoffPerCell')?.value).toBe(2.8)
  })

  it('is charged in about an hour at 1C', async () => {
    const reply = await answered('time pack: 6S 1300 LTO current: 1.3A from: 2.1V per cell to: full')
    expect(figure(reply, 'cutoffPerCell')).toMatchObject({ value: 2.8 })
    const typical_s = figure(reply, 'chargeTime')?.value ?? 0
    expect(typical_s).toBeGreaterThan(45 * 60)
    expect(typical_s).toBeLessThan(90 * 60)
  })

  it('is refused where it is damaged, overcharged or set too high', async () => {
    for (const question of [
      'current pack: 6S 1300 LTO from: 1.4V per cell',
      'current pack: 6S 1300 LTO from: 3V per cell',
      'time pack: 6S 1300 LTO current: 1A to: 4.2V per cell',
    ]) {
      expect((await answered(question)).verdict).toBe('do not charge')
    }
  })

  it('is read back by its volts', async () => {
    const reply = await answered('percent chemistry: LTO at: 2.28V')
    expect(reply.headline).toContain('LTO')
    expect(figure(reply, 'soc')?.value).toBeCloseTo(50, 1)
    expect(told(await answered('percent pack: 6S 1300 LTO at: 50%'))).toContain('2.28 V')
  })

  it('is stored at 2.30 V', async () => {
    const reply = await answered('storage pack: 6S 1300 LTO from: full discharge: 1A')
    expect(told(reply)).toContain('2.30 V')
    expect(told(await answered('storage chemistry: 6S LTO'))).toContain('2.30 V')
  })

  it('has its cells checked', async () => {
    const sound = await answered('cells pack: 3S 1300 LTO volts: 2.31 2.31 2.32')
    expect(sound.verdict).toBe('go')
    const full = await answered('cells pack: 3S 1300 LTO volts: 2.80 2.80 2.79 when: full')
    expect(full.verdict).toBe('go')
    const mislabelled = await answered('cells pack: 3S 1300 LTO volts: 3.85 3.85 3.86')
    expect(mislabelled.verdict).toBe('do not charge')
    expect(mislabelled.headline).toMatch(/above full, 2\.80.V\. .*look like LiPo cells/)
  })

  it('is charged beside its like, and beside no other', async () => {
    const alike = await answered('parallel packs: 2x 6S 1300 LTO at 2.3V per cell charger: 0.1-10A by 0.1')
    expect(alike.verdict).not.toBe('do not charge')
    expect(told(alike)).toContain('2.80 V')
    const mixed = await answered('parallel packs: 6S 1300 LTO at 2.3V per cell; 6S 1300 LiPo at 3.8V per cell')
    expect(mixed.verdict).toBe('do not charge')
    expect(mixed.headline).toContain('LTO and LiPo')
  })

  it('is fed from a source, and is one', async () => {
    const fed = await answered('source source: 4S 5000 Li-ion pack: 6S 1300 LTO from: 2.1V per cell')
    expect(told(fed)).toContain('2.80 V')
    const feeds = await answered('source source: 6S 5000 LTO pack: 3S 720 LiHV')
    expect(told(feeds)).toContain('LTO must not go below 1.90 V')
  })

  it('is planned', async () => {
    const reply = await answered(
      'plan packs: 2x 6S 1300 LTO at 2.1V per cell chargers: 0.1-10A by 0.1 200W sources: PD 65W',
    )
    expect(told(reply)).toContain('2.80 V a cell')
  })

  it('is compared', async () => {
    const reply = await answered('compare packs: 6S 1300 LTO 250g; 4S 1300 LiPo 150g')
    // 6 cells of 2.4 V and 1.3 Ah.
    expect(told(reply)).toContain('18.7 Wh')
  })

  it('travels', async () => {
    expect(told(await answered('travel packs: 2x 6S 1300 LTO'))).toContain('18.7 Wh')
  })

  it('lends down to its floor', async () => {
    const reply = await answered('lend pack: 6S 5000 LTO power: 10W')
    expect(told(reply)).toContain('1.90 V')
  })

  it('has its line among the rules, and its limits in the house', async () => {
    const reply = await answered('rules')
    expect(figure(reply, 'fullLTO')).toMatchObject({ label: 'LTO', value: 2.8 })
    expect(figure(reply, 'fullLTO')?.text).toContain('2.80 V a cell; storage 2.30 V')
    expect(figure(await answered('house show'), 'storageLTO')?.value).toBe(2.3)
  })

  it('is named where a chemistry is asked for', async () => {
    await answered('help')
    await answered('help about: current')
    const reply = await asking.ask('percent at: 3.7V')
    expect(reply.problem?.expected).toContain('Li-ion, LiFe or LTO')
    expect(asking.faults).toEqual([])
  })
})
