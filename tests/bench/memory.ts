// What the memory costs an answer: a kit of ten thousand names beside an empty one, commits, and a long strange question.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Occasion } from '../../src/assistant/occasion.ts'
import { type Assistant, createAssistant } from '../../src/assistant/running/assistant.ts'
import type { Memory } from '../../src/memory/memory.ts'
import { openMemory } from '../../src/memory/opening/open.ts'
import { commandNamed } from '../support/commands.ts'
import type { Row } from './benches.ts'
import { percentile, timesOf } from './timing.ts'

const current = commandNamed('current')

const entries = 10_000
const times = 500

const occasion: Occasion = {
  surface: 'room',
  asker: { id: 'room:wim', name: 'Wim', moderates: false },
  community: { id: 'room:heron-meadow', name: 'Heron Meadow Electric Flyers' },
  place: { id: 'room', direct: false },
}

export default async function memoryBench(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'chargehand-bench-'))
  const empty = await openMemory({ dataFolder: join(folder, 'empty') })
  const full = await openMemory({ dataFolder: join(folder, 'full') })
  try {
    await save(empty, 'wren-4321')
    for (let i = 0; i < entries; i++) await save(full, `wren-${i}`)
    return [...(await answerRows(empty, full)), await commitRow(full)]
  } finally {
    await Promise.all([empty.close(), full.close()])
    rmSync(folder, { recursive: true })
  }
}

const save = (memory: Memory, name: string) =>
  memory.kit.save(
    { owner: { scope: 'community', id: occasion.community.id }, name, kind: 'pack', notation: '3S 720mAh LiHV' },
    Number.POSITIVE_INFINITY,
  )

async function answerRows(empty: Memory, full: Memory): Promise<Row[]> {
  const onFault = (fault: unknown) => {
    throw fault
  }
  const one = createAssistant({ commands: [current], memory: empty, onFault })
  const many = createAssistant({ commands: [current], memory: full, onFault })
  const compared = async (name: string, work: (assistant: Assistant) => Promise<unknown>): Promise<Row> => {
    const among_one = percentile(await timesOf(times, () => work(one)), 50)
    const among_many = percentile(await timesOf(times, () => work(many)), 50)
    return {
      name: `${name}, median among ${entries} names`,
      value: `${among_many.toFixed(2)} ms`,
      ratio: `${(among_many / among_one).toFixed(2)} times that among one name, ${among_one.toFixed(2)} ms`,
    }
  }
  const strange = Array.from({ length: 600 }, (_, i) => `bird${i}`)
    .join(' ')
    .slice(0, 3900)
  return [
    await compared('answer without a name', assistant => assistant.answer('current pack: 3S 720 LiHV', occasion)),
    await compared('answer with a name', assistant => assistant.answer('current pack: wren-4321', occasion)),
    await compared('answer in plain words', assistant => assistant.answer('what current for wren-4321', occasion)),
    await compared('completion of a name', assistant => assistant.complete('current', 'pack', 'wren-43', occasion)),
    await compared('4,000 strange characters', assistant => assistant.answer(`what current ${strange}`, occasion)),
  ]
}

async function commitRow(memory: Memory): Promise<Row> {
  let number = 0
  const took_ms = await timesOf(times, () => memory.questions.keep(`question ${number++}`))
  const total_s = took_ms.reduce((sum, time) => sum + time, 0) / 1000
  return { name: 'commits that reach the disk', value: `${(times / total_s).toFixed(0)} a second` }
}
