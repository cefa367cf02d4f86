// The examples in the documents, asked anew: what they show is what the room says.

import { existsSync, globSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { stockDemoKit } from '../../src/room/demo-club.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { renderText } from '../../src/room/render-text.ts'
import { openTestMemory } from '../support/test-memory.ts'

interface Example {
  readonly document: string
  readonly question: string
  /** Runs of lines; between two runs anything may stand. */
  readonly runs: readonly string[]
}

const examples: readonly Example[] = globSync(['*.md', 'docs/**/*.md', 'deploy/*.md']).flatMap(document =>
  [...readFileSync(document, 'utf8').matchAll(/^```room\nask> (.+)\n([\s\S]*?)^```$/gm)].map(
    ([, question = '', shown = '']) => ({ document, question, runs: shown.split(/^…\n/m).map(run => run.trim()) }),
  ),
)

/** As the room says it to a demo club that is new, where no clock is known and nothing is left to chance. */
async function said(question: string): Promise<string> {
  const memory = await openTestMemory()
  await stockDemoKit(memory.kit)
  const faults: unknown[] = []
  const assistant = createAssistant({ commands, memory, newSeed: () => 1, onFault: fault => faults.push(fault) })
  const reply = await assistant.answer(question, roomOccasion())
  await assistant.settled()
  await memory.close()
  expect(faults).toEqual([])
  return renderText(reply, { width: 100, colour: false })
}

describe('the examples in the documents', () => {
  it('are found', () => {
    expect(examples.length).toBeGreaterThan(4)
  })

  it.each(examples)('$document: $question', async ({ question, runs }) => {
    const text = await said(question)
    let from = 0
    for (const run of runs) {
      const at = text.indexOf(run, from)
      expect(at, `"${run}" in:\n${text}`).toBeGreaterThanOrEqual(0)
      from = at + run.length
    }
    if (runs[0] !== '') expect(text.startsWith(runs[0] ?? '')).toBe(true)
  })
})

it('no document leads to what is not there', () => {
  const missing = globSync(['*.md', 'docs/**/*.md', 'deploy/*.md']).flatMap(document =>
    [...readFileSync(document, 'utf8').matchAll(/\]\((?!https?:)([^)]*)\)/g)].flatMap(([, link = '']) => {
      const [path = '', anchor] = link.split('#')
      const file = path === '' ? document : join(dirname(document), path)
      if (!existsSync(file)) return [`${document}: ${link}`]
      return anchor === undefined || anchorsIn(readFileSync(file, 'utf8')).has(anchor) ? [] : [`${document}: ${link}`]
    }),
  )
  expect(missing).toEqual([])
})

/** As forges make them of headings. */
const anchorsIn = (text: string): ReadonlySet<string> =>
  new Set(
    [...text.matchAll(/^#+ (.+)$/gm)].map(([, title = '']) =>
      title
        .toLowerCase()
        .replace(/[^\p{L}\p{N} -]/gu, '')
        .replaceAll(' ', '-'),
    ),
  )
