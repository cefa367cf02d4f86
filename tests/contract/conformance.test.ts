// One table of questions through all renderers: the same figures, cautions, verdict and deference everywhere.

import { describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { verdictWords } from '../../src/assistant/layers/short.words.ts'
import type { Occasion } from '../../src/assistant/occasion.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { deferenceIn } from '../../src/assistant/reply.words.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { english } from '../../src/ground/locale.ts'
import { fakeBoard } from '../support/fake-noticeboard.ts'
import { folded, textsOf } from '../support/rendered-text.ts'
import { openTestMemory } from '../support/test-memory.ts'

const deference = deferenceIn(english('.'))

const occasion: Occasion = {
  surface: 'room',
  asker: { id: 'room:conformance', name: 'Ada', moderates: true },
  community: { id: 'room:conformance-club', name: 'Conformance Club' },
  place: { id: 'room:conformance', direct: false },
}

const memory = await openTestMemory()
const owner = { scope: 'community', id: occasion.community.id } as const
await memory.kit.save({ owner, name: 'wren', kind: 'pack', notation: '3S 720mAh LiHV' }, 1)
const faults: unknown[] = []
const assistant = createAssistant({
  commands,
  memory,
  clock: () => new Date('2026-05-02T10:00:00Z'),
  noticeboard: fakeBoard().noticeboard,
  onFault: fault => faults.push(fault),
})

/** Every command's own examples, and what people get wrong. */
const questions: readonly string[] = [
  ...commands.flatMap(({ examples }) => examples),
  'what current for a 3s 720 hv on a 0.5/1/2/4 A charger',
  'how long for 6s 1300 lipo at 2A from 3.6',
  'can my 4s 5000 li-ion charge 6 of my 3s 720 lihv',
  'time pack: 1S 5450mAh LiPo current: 5.45A from: 3V per cell to: 4.10V until: 0.545A resistance: 8mΩ',
  'time pack: 2S 1100 LiFe current: 1A to: 4.2V',
  'current pack: 1S 300 LiPo charger: 1/2/3/5A',
  'current pack: 3S 720 LiHV from: 2.1V per cell',
  'current pack: 3S 720 LiHV temperature: 70°C',
  'source source: PD 15W pack: 6S 1300 LiPo charger: 0.1-10A by 0.1 200W 6S 10-30V',
  'current pack: 0S 720 LiHV',
  'current pack: 99S 720 LiHV',
  'time pack: 3S 720 LiHV current: -5A',
  'time pack: 3S 720 LiHV current: 1e308',
  'time pack: 3S 720 LiHV current: NaN',
  'current pack: 3S 1,234 LiHV',
  'current <b>pack</b>: *3S* `720` [LiHV](https://example.org) @everyone & "quotes"',
  '',
  '🔋🔋🔋',
  '\u202eטעינה של סוללה',
  'current '.repeat(2500),
]

// One after another: what one question saves, a later one lists or renames.
const replies: Reply[] = []
for (const question of questions) replies.push(await assistant.answer(question, occasion))
await assistant.settled()
await memory.close()

describe('the same reply on every surface', () => {
  it.each(replies.map((reply, at) => [questions[at]?.slice(0, 70), reply] as const))('%s', (_, reply) => {
    for (const [surface, text] of Object.entries(textsOf(reply))) {
      const must = [
        ...reply.lines,
        ...(reply.verdict && surface !== 'room JSON' ? [verdictWords(reply.locale)[reply.verdict]] : []),
        ...reply.figures.map(figure => figure.text),
        ...reply.cautions.map(caution => caution.text),
        ...reply.assumed,
        ...(reply.problem?.token === undefined ? [] : [reply.problem.expected]),
        ...(reply.problem ? reply.followUps.map(({ label }) => label) : []),
        deference,
      ]
      const missing = must.map(folded).filter(said => !text.includes(said))
      expect(missing, `missing on ${surface}`).toEqual([])
    }
  })

  it('without a fault, and with an answer to each command', () => {
    expect(faults).toEqual([])
    const answered = new Set(replies.filter(({ problem }) => !problem).map(({ command }) => command))
    expect(commands.map(({ name }) => name).filter(name => !answered.has(name))).toEqual([])
  })
})
