import stringWidth from 'string-width'
import { describe, expect, it } from 'vitest'
import { deferenceIn } from '../../../src/assistant/reply.words.ts'
import { generalCaution } from '../../../src/assistant/verdict.words.ts'
import { english } from '../../../src/ground/locale.ts'
import { renderText } from '../../../src/room/render-text.ts'
import { plainReply } from '../../support/plain-command.ts'

const deference = deferenceIn(english('.'))

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

describe('a reply in the terminal', () => {
  it('starts with verdict and answer and ends with what can be asked next', () => {
    const lines = renderText(reply, { width: 80, colour: false }).split('\n')
    expect(lines[0]).toBe('[go with care]')
    expect(lines[1]).toMatch(/^Set 0\.72 A and 4\.35 V per cell/)
    expect(lines.at(-1)).toContain('time pack: 3S 720mAh LiHV current: 0.72A')
  })

  it('lines the figures up', () => {
    expect(renderText(reply, { width: 80, colour: false })).toContain(
      '  current to set  0.72 A\n  rate            1C\n',
    )
  })

  it.each([30, 60, 100])('keeps within %i columns', width => {
    const lines = renderText(reply, { width, colour: false }).split('\n')
    expect(Math.max(...lines.map(line => stringWidth(line)))).toBeLessThanOrEqual(width)
  })

  it('says the same with colour as without', () => {
    const coloured = renderText(reply, { width: 80, colour: true })
    expect(coloured).toContain('\u001b[')
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colour is made of them.
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(renderText(reply, { width: 80, colour: false }))
  })

  it('points at the word and gives an example where the question is at fault', () => {
    const problem = { what: 'No.', token: '99S', expected: '1S to 14S', example: '3S 720 LiHV' }
    const failed = plainReply(
      { command: 'current', readAs: 'x', problem },
      { headline: 'No.', cautions: [generalCaution(english('.'))] },
    )
    const text = renderText(failed, { width: 80, colour: false })
    expect(text).toContain('At: "99S"\n  Expected: 1S to 14S\n  For example: 3S 720 LiHV')
    expect(text.replace(/\s+/g, ' ')).toContain(deference)
  })
})
