import stringWidth from 'fast-string-width'
import { describe, expect, it } from 'vitest'
import { layers } from '../../../src/assistant/layers/opened.ts'
import { deferenceIn } from '../../../src/assistant/reply.words.ts'
import { generalCaution } from '../../../src/assistant/verdict.words.ts'
import { english } from '../../../src/ground/locale.ts'
import { renderFull, renderLayer, renderText } from '../../../src/room/render-text.ts'
import { nextOf } from '../../../src/room/typed-next.ts'
import { plainReply } from '../../support/plain-command.ts'

const deference = deferenceIn(english('.'))
const { own } = english('.')

const reply = plainReply(
  { command: 'current', readAs: '3S 720mAh LiHV', question: 'current pack: 3S 720mAh LiHV' },
  {
    verdict: 'go with care',
    headline: 'Set 0.72 A and 4.35 V per cell (13.05 V for 3S), and stay with it for all of the time it takes.',
    figures: [
      { key: 'setCurrent', label: 'current to set', value: 0.72, unit: 'A', text: '0.72 A' },
      { key: 'cRate', label: 'rate', value: 1, unit: 'C', text: '1C' },
    ],
    working: ['1C × 720 mAh = 0.72 A, and more words than one line of a narrow window could ever hold.'],
    cautions: [generalCaution(english('.'))],
    followUps: [{ label: 'How long?', question: 'time pack: 3S 720mAh LiHV current: 0.72A' }],
  },
)

const rules = { width: 80, colour: false }

describe('a reply in the terminal', () => {
  it('starts with the verdict and the answer and ends with what can be typed next, where that fits', () => {
    const taps = [own('x '.repeat(900)), own('more')]
    const lines = renderText(reply, rules, taps).split('\n')
    expect(lines[0]).toMatch(/^CARE ⚠️ Set 0\.72 A and 4\.35 V per cell/)
    expect(lines.at(-1)).toBe('more')
  })

  it('holds back figures and working until they are asked for', () => {
    expect(renderText(reply, rules)).not.toContain('1C')
    expect(renderLayer(reply, 'figures', rules)).toContain('Figures\n  - current to set: 0.72 A\n  - rate: 1C\n')
    for (const layer of layers) expect(renderLayer(reply, layer, rules)).toContain(deference)
    const full = renderFull(reply, rules)
    for (const said of ['0.72 A', '1C × 720 mAh', 'What if\n  - How long?']) expect(full).toContain(said)
  })

  it.each([30, 60, 100])('keeps within %i columns', width => {
    const lines = renderFull(reply, { width, colour: false }).split('\n')
    expect(Math.max(...lines.map(line => stringWidth(line)))).toBeLessThanOrEqual(width)
  })

  it('says the same with colour as without', () => {
    const coloured = renderFull(reply, { width: 80, colour: true })
    expect(coloured).toContain('\u001b[')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colour is made of them.
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(renderFull(reply, rules))
  })

  it('points at the word and gives the question corrected where it is at fault', () => {
    const problem = { what: 'No.', token: '99S', expected: '1S to 14S', example: '3S 720 LiHV' }
    const failed = plainReply(
      { command: 'current', readAs: 'x', problem },
      { headline: 'No.', cautions: [generalCaution(english('.'))] },
    )
    const text = renderText(failed, rules)
    expect(text).toMatch(/^ASK ❓ No\.\nAt "99S" I need 1S to 14S\.\nTry: 3S 720 LiHV\n/)
    expect(text).toContain(deference)
  })
})

describe('what is typed after an answer', () => {
  it('opens a layer of it or all of it; else it is a question', () => {
    expect(nextOf('Why', reply)).toEqual({ kind: 'layer', layer: 'why' })
    expect(nextOf('more', reply)).toEqual({ kind: 'full' })
    expect(nextOf('how long', reply)).toEqual({ kind: 'question', question: 'how long' })
    for (const line of ['why', 'more', '1'])
      expect(nextOf(line, undefined)).toEqual({ kind: 'question', question: line })
  })
})
