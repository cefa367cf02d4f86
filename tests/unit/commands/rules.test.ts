// The rules card: everything that is judged, on one screen, with who says so behind it.

import { wrapAnsi } from 'fast-wrap-ansi'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { dangers } from '../../../src/charging/situation/dangers.ts'
import { chemistries } from '../../../src/charging/things/chemistries.ts'
import { type Asking, askingOf, member, moderator } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { endFaultless } from '../../support/end-faultless.ts'

let asking: Asking
beforeEach(async () => {
  asking = await askingOf([commandNamed('rules'), commandNamed('house set')])
})
afterEach(() => endFaultless(asking))

const card = async () => asking.ask('rules', member)

describe('the rules card', () => {
  test('fits one screen', async () => {
    const { headline, figures } = await card()
    expect(wrapAnsi(headline, 100).split('\n').length + figures.length).toBeLessThanOrEqual(14)
    // Bold on top of a message, and no more than one holds.
    expect(headline.length).toBeLessThan(1000)
  })

  test('has a line for each chemistry, with the limits that judge a charge', async () => {
    const { figures } = await card()
    expect(figures.map(({ label }) => label)).toEqual(chemistries.map(({ name }) => name))
    const { text } = figures[0] ?? { text: '' }
    expect(text.replaceAll('\u00a0', ' ')).toBe(
      'full 4.20 V a cell; storage 3.85 V; landing 3.60 V; dead 2.50 V; source 3.40 V; to 2C; 0 °C to 45 °C',
    )
  })

  test('says what always holds, also where it is asked for in plain words', async () => {
    const { headline, figures, cautions } = await asking.ask('what are the rules', member)
    const said = [headline, ...figures.map(({ text }) => text), ...cautions.map(({ text }) => text)].join(' ')
    for (const rule of [
      'stay with the pack',
      'swollen',
      'cell count',
      'alone',
      'call for help',
      'storage',
      'in sight',
    ]) {
      expect(said).toContain(rule)
    }
  })

  test('is stricter where the club is', async () => {
    await asking.ask('house set chemistry: Li-ion rate: 0.5C storage: 3.6V floor: 3.3V gentle: yes', moderator)
    const text = (await card()).figures.find(({ key }) => key === 'fullLiIon')?.text.replaceAll('\u00a0', ' ')
    for (const part of ['full 4.10 V', 'storage 3.60 V', 'source 3.30 V', 'to 0.5C']) expect(text).toContain(part)
  })

  test('says of every danger who warns of it', async () => {
    const working = (await card()).working.join('\n')
    for (const { from } of Object.values(dangers)) expect(working).toContain(from)
  })
})
