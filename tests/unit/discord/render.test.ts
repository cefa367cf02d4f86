// A reply as a Discord message: what is said first, what is never cut, what Discord would refuse.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { problemReply } from '../../../src/assistant/asking/failures.ts'
import { layers } from '../../../src/assistant/layers/opened.ts'
import type { Answer, Reply } from '../../../src/assistant/reply.ts'
import { questionsBehind } from '../../../src/discord/messages/buttons.ts'
import { renderReply } from '../../../src/discord/messages/render.ts'
import { english } from '../../../src/ground/locale.ts'
import { Problem } from '../../../src/ground/problem.ts'
import { cases } from '../../support/cases.ts'
import { callbackFaults, faultsOf } from '../../support/discord-payload.ts'
import { type Plain, plainReply } from '../../support/plain-command.ts'

const answer: Plain<Answer> = {
  verdict: 'do not charge',
  headline: 'Do not charge this pack.',
  figures: [{ key: 'setCurrent', label: 'current to set', value: 0, unit: 'A', text: '0 A' }],
  working: ['2.1 V is under 2.5 V (common practice)'],
  cautions: [{ key: 'damaged', text: 'Take it outside and let it rest.', must: true }],
}
const replyTo = (changes: Partial<Plain<Answer>> = {}): Reply =>
  plainReply(
    { command: 'bench', readAs: '3S 720 LiHV', question: 'bench pack: 3S 720 LiHV' },
    { ...answer, ...changes },
  )

const behindOf = (reply: Reply) => new Map(questionsBehind(reply).map(question => [question, { whole: question }]))
const labels = (rendered: ReturnType<typeof renderReply>) =>
  rendered.components.flatMap(row => row.components.map(({ label }) => label))

describe('renderReply', () => {
  it('says the verdict and the answer first, in words beside its colour', () => {
    const [embed] = renderReply(replyTo()).embeds
    expect(embed?.description?.split('\n').slice(0, 2)).toEqual([
      '**NO ⛔ Do not charge this pack.**',
      'Take it outside and let it rest.',
    ])
    const colours = (['go', 'go with care', 'do not charge'] as const).map(
      verdict => renderReply(replyTo({ verdict })).embeds[0]?.color,
    )
    expect(new Set(colours).size).toBe(3)
  })

  it('keeps each layer behind a button until it is asked for, and closes it with the deference', () => {
    const reply = replyTo()
    const behind = behindOf(reply)
    const brief = renderReply(reply, { view: 'brief', behind, pictures: [] })
    const why = renderReply(reply, { view: 'why', behind, pictures: [] })
    expect(JSON.stringify(brief.embeds)).not.toContain('is under')
    expect(why.embeds[0]?.description).toContain(
      '• 2.1\u00a0V is under 2.5\u00a0V (common practice)\nNO ⛔ Do not charge this pack.\nTake it outside',
    )
    expect(why.embeds[0]?.description?.endsWith(reply.deference)).toBe(true)
    expect([labels(brief), labels(why)]).toEqual([['Why', 'Figures', 'Ask more'], []])
  })

  it('shows at once what has nothing but working, as help has', () => {
    const reply = plainReply(
      { command: 'help', readAs: 'help', question: 'help' },
      { headline: 'Ask.', working: ['time: how long'], lists: true, cautions: answer.cautions },
    )
    const rendered = renderReply(reply, { view: 'brief', behind: behindOf(reply), pictures: [] })
    expect(rendered.embeds[0]?.description).toContain('**Ask.**\ntime: how long\n')
  })

  it('says what is wrong with a question, where, and what would do', () => {
    const problem = new Problem({
      what: ({ say }) => say`No.`,
      token: '9*9S',
      expected: ({ say }) => say`1S to 14S`,
      example: '3S 720 LiHV',
    })
    const text = renderReply(problemReply('bench', english('.').own('9*9S'), problem, english('.'))).embeds[0]
      ?.description
    expect(text).toContain('**ASK ❓ No.**\nAt "9\\*9S" I need 1S to 14S.\nTry: 3S 720 LiHV')
  })

  it('pings nobody and takes no markup from what was typed', () => {
    const rendered = renderReply(replyTo({ headline: '@everyone <@1> [x](https://evil.example)' }))
    expect(rendered.allowed_mentions).toEqual({ parse: [], replied_user: false })
    expect(rendered.embeds[0]?.description).toContain(String.raw`@everyone \<@1\> \[x\](https\://evil.example)`)
  })

  it('gives no two buttons the same id and no more than fit a phone', () => {
    const followUps = Array.from({ length: 30 }, (_, at) => ({
      label: `what if ${at % 14}`,
      question: `bench pack: ${at % 14}`,
    }))
    const reply = replyTo({ followUps: [{ label: 'again', question: 'bench pack: 3S 720 LiHV' }, ...followUps] })
    const rendered = renderReply(reply, { view: 'brief', behind: behindOf(reply), pictures: [] })
    expect(faultsOf('message', rendered)).toEqual([])
    expect(labels(rendered)).toHaveLength(3 + 10)
  })

  it('describes its pictures in words', () => {
    const pictures = [
      { filename: 'chart-1.png', alternative: 'volts rise, amps fall' },
      { filename: 'chart-2.png', alternative: 'the source sags' },
    ]
    const rendered = renderReply(replyTo(), { view: 'brief', behind: new Map(), pictures })
    expect(rendered.attachments.map(({ description }) => description)).toEqual(pictures.map(p => p.alternative))
    expect(faultsOf('message', rendered)).toEqual([])
  })

  it('throws rather than cut a caution', () => {
    const cautions = [{ key: 'long', text: 'x '.repeat(4000), must: true }] as const
    expect(() => renderReply(replyTo({ cautions }))).toThrow(RangeError)
  })
})

describe('any reply', () => {
  const text = (maxLength: number) => fc.string({ unit: 'grapheme', minLength: 1, maxLength })
  const caution = fc.record({
    key: fc.constant('k'),
    text: text(400).filter(value => value.trim() !== ''),
    must: fc.boolean(),
  })
  const anyAnswer = fc.record({
    verdict: fc.constantFrom('go', 'go with care', 'do not charge'),
    headline: text(3000),
    figures: fc.array(
      fc.record({
        key: fc.constant('f'),
        label: text(300),
        value: fc.double(),
        unit: fc.constant('A'),
        text: text(300),
      }),
      { maxLength: 40 },
    ),
    working: fc.array(text(2000), { maxLength: 40 }),
    cautions: fc.array(caution, { minLength: 1, maxLength: 4 }),
    assumed: fc.array(text(1500), { maxLength: 10 }),
    followUps: fc.array(fc.record({ label: text(200), question: text(200) }), { maxLength: 40 }),
  }) as unknown as fc.Arbitrary<Plain<Answer>>

  it('becomes a message that Discord takes, with what must be said whole and the deference', () => {
    fc.assert(
      fc.property(anyAnswer, text(3000), fc.constantFrom('brief', ...layers), (answer, readAs, view) => {
        const reply = plainReply({ command: 'bench', readAs, question: 'q' }, answer)
        const rendered = renderReply(reply, { view, behind: behindOf(reply), pictures: [] })
        expect(callbackFaults({ type: 4, data: rendered })).toEqual([])
        const [embed] = rendered.embeds
        const said = [embed?.description, ...(embed?.fields ?? []).map(({ value }) => value)].join(' ')
        const unspaced = (value: string) => value.replace(/\s+/g, '')
        const unescaped = unspaced(said.replace(/\\([^0-9A-Za-z\s])/g, '$1'))
        for (const { text, must } of reply.cautions)
          if (must || view === 'care') expect(unescaped).toContain(unspaced(text))
        expect(unescaped).toContain(unspaced(reply.deference))
      }),
      cases(300),
    )
  })
})
