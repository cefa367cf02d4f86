import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { optional, required } from '../../../src/assistant/command.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { createRegistry } from '../../../src/assistant/registry.ts'
import { deferenceIn } from '../../../src/assistant/reply.words.ts'
import { createAssistant } from '../../../src/assistant/running/assistant.ts'
import { generalCaution, untilClear } from '../../../src/assistant/verdict.words.ts'
import { english } from '../../../src/ground/locale.ts'
import { Problem } from '../../../src/ground/problem.ts'
import { currentKind, packKind } from '../../../src/language/kinds/values.ts'
import { anyCharacter } from '../../support/any-character.ts'
import { cases } from '../../support/cases.ts'
import { plainCommand } from '../../support/plain-command.ts'
import { openTestMemory } from '../../support/test-memory.ts'

const deference = deferenceIn(english('.'))

const memory = await openTestMemory()

const occasion: Occasion = {
  surface: 'room',
  asker: { id: 'room:test', name: 'Test', moderates: false },
  community: { id: 'room:test-club', name: 'Test Club' },
  place: { id: 'room', direct: false },
}

const weigh = plainCommand({
  name: 'weigh',
  summary: 'Says what it was given.',
  takes: { pack: required(packKind), current: optional(currentKind) },
  about: { pack: 'the pack', current: 'the current' },
  as: { current: 'at $' },
  examples: ['weigh pack: 3S 720 LiHV'],
  answer: ({ pack, current }) => {
    if (current === 13) throw new TypeError('secret-token-in-a-fault')
    if (current === 7)
      throw new Problem({
        what: ({ say }) => say`Not seven.`,
        token: '7A',
        expected: ({ say }) => say`less`,
        example: '6A',
      })
    return { headline: `${pack.series} cells, ${current ?? 'no'} A`, cautions: [generalCaution(english('.'))] }
  },
})

function assistantWithFaults() {
  const faults: { fault: unknown; reference: string }[] = []
  const onFault = (fault: unknown, reference: string) => void faults.push({ fault, reference })
  return { faults, assistant: createAssistant({ commands: [weigh], memory, onFault }) }
}

describe('dispatch', () => {
  it('answers with what was read, the canonical question, cautions and deference', async () => {
    const { assistant } = assistantWithFaults()
    const reply = await assistant.answer('weigh current: 500mA pack: 3s 720 lihv', occasion)
    expect(reply).toMatchObject({ command: 'weigh', headline: '3 cells, 0.5 A', deference })
    expect(reply.problem).toBeUndefined()
    expect(reply.readAs).toContain('LiHV')
    expect(reply.readAs).toContain('at 0.5')
    expect(reply.question).toBe((await assistant.answer(reply.question ?? '', occasion)).question)
  })

  it('asks for a required detail that is missing', async () => {
    const { assistant, faults } = assistantWithFaults()
    const { problem } = await assistant.answer('weigh', occasion)
    expect(problem).toMatchObject({ what: 'I need the pack to answer that.' })
    expect(problem?.example).toContain('weigh pack: 3S 720 LiHV')
    expect(faults).toEqual([])
  })

  it('points at the word that a command refuses', async () => {
    const { assistant } = assistantWithFaults()
    const reply = await assistant.answer('weigh pack: 3S 720 LiHV current: 7A', occasion)
    expect(reply.problem).toEqual({ what: 'Not seven.', token: '7A', expected: 'less', example: '6A' })
    expect(reply.cautions).toEqual([untilClear(english('.'))])
  })

  it('turns a fault into a reply with a reference, and tells only the log what it was', async () => {
    const { assistant, faults } = assistantWithFaults()
    const reply = await assistant.answer('weigh pack: 3S 720 LiHV current: 13A', occasion)
    expect(reply.fault).toMatch(/^[0-9a-f]{8}$/)
    expect(faults).toMatchObject([{ reference: reply.fault, fault: expect.any(TypeError) }])
    expect(JSON.stringify(reply)).not.toContain('secret-token-in-a-fault')
    expect(JSON.stringify(reply)).not.toContain('.ts:')
  })

  it('names an unknown option and the options there are', async () => {
    const { assistant } = assistantWithFaults()
    const asked = { command: 'weigh', options: { pack: '3S 720 LiHV', colour: 'red' } }
    const { problem } = await assistant.answer(asked, occasion)
    expect(problem).toMatchObject({ token: 'colour', expected: 'one of: pack, current' })
  })

  it('gives every text a complete reply, and no text a fault', async () => {
    const { assistant, faults } = assistantWithFaults()
    const text = fc.oneof(
      fc.string({ unit: anyCharacter }),
      fc.string().map(end => `weigh pack: ${end}`),
      fc.constantFrom('', '\u202eweigh', '🔋'.repeat(50), 'weigh '.repeat(4000)),
    )
    await fc.assert(
      fc.asyncProperty(text, async asked => {
        const reply = await assistant.answer(asked, occasion)
        expect(reply.headline.length).toBeGreaterThan(0)
        expect(reply.readAs.length).toBeGreaterThan(0)
        expect(reply.cautions.length).toBeGreaterThan(0)
        expect(reply.deference).toBe(deference)
        expect(reply.readAs).not.toMatch(/[\p{Cc}\p{Cf}]/u)
      }),
      cases(1000),
    )
    expect(faults).toEqual([])
  })
})

describe('the registry', () => {
  it('refuses two commands of one name', () => {
    expect(() => createRegistry([weigh, weigh])).toThrow('two commands are named "weigh"')
  })

  it('names the commands there are when asked for another', () => {
    expect(() => createRegistry([weigh]).get('way')).toThrow(Problem)
  })
})
