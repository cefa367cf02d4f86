// A reply as a Matrix message: what is said first, what is never cut, what becomes of signs that mean something in HTML.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { problemReply } from '../../../src/assistant/asking/failures.ts'
import { layers } from '../../../src/assistant/layers/opened.ts'
import type { Answer, Reply } from '../../../src/assistant/reply.ts'
import { english } from '../../../src/ground/locale.ts'
import { Problem } from '../../../src/ground/problem.ts'
import { answerContent, editContent } from '../../../src/matrix/messages/content.ts'
import { offeredBy, tapIn } from '../../../src/matrix/messages/reactions.ts'
import { renderReply } from '../../../src/matrix/messages/render.ts'
import { cases } from '../../support/cases.ts'
import { type Plain, plainReply } from '../../support/plain-command.ts'

const answer: Plain<Answer> = {
  verdict: 'do not charge',
  headline: 'Do not charge this pack.',
  figures: [{ key: 'setCurrent', label: 'current to set', value: 0, unit: 'A', text: '0 A' }],
  working: ['2.1 V is under 2.5 V (common practice)'],
  cautions: [{ key: 'damaged', text: 'Take it outside and let it rest.', must: true }],
  followUps: [{ label: 'At storage', question: 'bench pack: 3S 720 LiHV to: storage' }],
}
const replyTo = (changes: Partial<Plain<Answer>> = {}): Reply =>
  plainReply(
    { command: 'bench', readAs: '3S 720 LiHV', question: 'bench pack: 3S 720 LiHV' },
    { ...answer, ...changes },
  )

describe('renderReply', () => {
  it('says the verdict and the answer first, line by line, in both forms', () => {
    const { msgtype, body, formatted_body } = renderReply(replyTo())
    expect(msgtype).toBe('m.text')
    expect(body.split('\n').slice(0, 2)).toEqual(['NO ⛔ Do not charge this pack.', 'Take it outside and let it rest.'])
    expect(formatted_body).toMatch(/^<p><strong>NO ⛔ Do not charge this pack\.<\/strong><br>Take it outside/)
  })

  it('uses only tags that the specification names', () => {
    const tags = renderReply(replyTo(), { open: 'why' }).formatted_body.match(/<\/?[a-z]+/g) ?? []
    expect(new Set(tags.map(tag => tag.replace(/<\/?/, '')))).toEqual(new Set(['p', 'strong', 'br', 'ul', 'li']))
  })

  it('offers what can be opened, and shows it below the answer', () => {
    const short = renderReply(replyTo()).body
    expect(short).not.toContain('is under')
    expect(short).toContain('❔\u00a0Why · 🔢\u00a0Figures · 1️⃣\u00a0At\u00a0storage')
    const opened = renderReply(replyTo(), { open: 'why' }).body
    expect(opened).toContain('- 2.1\u00a0V is under')
    expect(opened).not.toContain('🔢')
  })

  it('offers nothing where it may not be asked again', () => {
    expect(renderReply(replyTo(), { once: true }).body).not.toContain('🔢')
  })

  it('understands the signs and the words that open a layer, close it, or ask what was suggested', () => {
    for (const { sign, tap } of offeredBy(replyTo())) expect(tapIn(sign)).toEqual(tap)
    expect([tapIn('Figures'), tapIn('less'), tapIn('1️⃣'), tapIn('at 2A')]).toEqual([
      { kind: 'layer', layer: 'figures' },
      { kind: 'less' },
      { kind: 'ask', index: 0 },
      undefined,
    ])
  })

  it('says what is wrong with a question, where, and what would do', () => {
    const problem = new Problem({
      what: ({ say }) => say`No.`,
      token: '9*9S',
      expected: ({ say }) => say`1S to 14S`,
      example: '3S 720 LiHV',
    })
    const { body } = renderReply(problemReply('bench', english('.').own('9*9S'), problem, english('.')))
    expect(body).toContain('ASK ❓ No.\nAt "9*9S" I need 1S to 14S.\nTry: 3S 720 LiHV')
  })

  it('takes no markup from what was typed', () => {
    const { formatted_body, body } = renderReply(replyTo({ headline: `<a href="x">&'</a>\n- item\u202eltr` }))
    expect(formatted_body).toContain('&lt;a href=&quot;x&quot;&gt;&amp;&#39;&lt;/a&gt; - itemltr')
    expect(body.split('\n')[0]).toBe(`NO ⛔ <a href="x">&'</a> - itemltr`)
  })

  it('throws rather than cut a caution', () => {
    const cautions = [{ key: 'long', text: 'x '.repeat(10_000), must: true }] as const
    expect(() => renderReply(replyTo({ cautions }))).toThrow(RangeError)
  })
})

describe('any reply', () => {
  const text = (maxLength: number) => fc.string({ unit: 'grapheme', minLength: 1, maxLength })
  const anyAnswer = fc.record({
    headline: text(3000),
    figures: fc.array(
      fc.record({
        key: fc.constant('k'),
        label: text(50),
        value: fc.constant(0),
        unit: fc.constant('A' as const),
        text: text(200),
      }),
      { maxLength: 60 },
    ),
    working: fc.array(text(3000), { maxLength: 60 }),
    assumed: fc.array(text(3000), { maxLength: 20 }),
    cautions: fc
      .array(fc.record({ key: fc.constant('k'), text: fc.lorem({ maxCount: 40 }), must: fc.boolean() }), {
        minLength: 1,
        maxLength: 8,
      })
      .map(cautions => cautions as unknown as Plain<Answer['cautions']>),
  })

  it('fits an event, also encrypted and as an edit, with what must be said and the deference', () => {
    fc.assert(
      fc.property(anyAnswer, fc.constantFrom(undefined, ...layers), (changes, open) => {
        const reply = replyTo(changes)
        const rendered = renderReply(reply, { open })
        for (const { text, must } of reply.cautions) if (must || open === 'care') expect(rendered.body).toContain(text)
        expect(rendered.body).toContain(reply.deference)
        const edit = JSON.stringify(editContent(rendered, '$answer', '@ada:club.test'))
        // Base64 is a third longer; the rest is the envelope. https://spec.matrix.org/v1.15/client-server-api/#size-limits
        expect((Buffer.byteLength(edit) * 4) / 3 + 2_000).toBeLessThan(65_536)
      }),
      cases(60),
    )
  })
})

describe('content', () => {
  const rendered = renderReply(replyTo())

  it('refers to the question and mentions its asker alone', () => {
    expect(answerContent(rendered, { question: '$q', asker: '@ada:club.test', thread: undefined })).toEqual({
      ...rendered,
      'm.mentions': { user_ids: ['@ada:club.test'] },
      'm.relates_to': { 'm.in_reply_to': { event_id: '$q' } },
    })
  })

  it('stays in the thread of the question', () => {
    const content = answerContent(rendered, { question: '$q', asker: '@ada:club.test', thread: '$root' })
    expect(content['m.relates_to']).toEqual({
      rel_type: 'm.thread',
      event_id: '$root',
      'm.in_reply_to': { event_id: '$q' },
    })
  })

  it('replaces an answer without mentioning anybody anew', () => {
    expect(editContent(rendered, '$answer', '@ada:club.test')).toEqual({
      msgtype: 'm.text',
      body: '* NO ⛔ Do not charge this pack.',
      'm.mentions': {},
      'm.new_content': { ...rendered, 'm.mentions': { user_ids: ['@ada:club.test'] } },
      'm.relates_to': { rel_type: 'm.replace', event_id: '$answer' },
    })
  })
})
