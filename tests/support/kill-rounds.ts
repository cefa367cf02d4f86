// Kills a writing process at random moments and looks whether anything that it had acknowledged is lost.

import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import type { Memory } from '../../src/memory/memory.ts'
import { openMemory } from '../../src/memory/opening/open.ts'
import { spokenBy } from './spoken.ts'
import { testDatabaseUrl } from './test-memory.ts'

export const countingCommunity = 'room:counting'
export const questionOf = (number: number): string => `current pack: 3S ${number}mAh LiHV`

/** Rounds on one database; then a new one, so that some kills hit the making of the schema. */
const roundsEach = 5
/** Every other kill comes this long at most after the start of the process, the others after its first write. */
const longestStart_ms = 700
const longestWriting_ms = 150

export interface KillReport {
  /** Rounds in which the process was killed; it never ends by itself. */
  readonly kills: number
  /** Those of them that came after a write was acknowledged. */
  readonly killsWhileWriting: number
  readonly acknowledged: number
  /** What was acknowledged and not found, or found half done. */
  readonly lost: readonly string[]
}

export async function killRounds(rounds: number): Promise<KillReport> {
  const lost: string[] = []
  let kills = 0
  let killsWhileWriting = 0
  let acknowledged = 0
  for (let round = 0; round < rounds; round += roundsEach) {
    const dataFolder = await mkdtemp(join(tmpdir(), 'chargehand-kill-'))
    const databaseUrl = await testDatabaseUrl()
    const known = new Map<number, string>()
    try {
      for (let again = 0; again < roundsEach; again++) {
        const whileWriting = kills % 2 === 0
        const output = await writeUntilKilled(whileWriting, [dataFolder, String(known.size), databaseUrl ?? ''])
        kills += 1
        if (output !== '') killsWhileWriting += 1
        for (const [number, id] of acknowledgements(output)) known.set(number, id)
        const memory = await openMemory({ dataFolder, databaseUrl })
        lost.push(...(await missingFrom(memory, known)))
        await memory.close()
      }
    } finally {
      await rm(dataFolder, { recursive: true })
    }
    acknowledged += known.size
  }
  return { kills, killsWhileWriting, acknowledged, lost }
}

async function writeUntilKilled(whileWriting: boolean, settings: readonly string[]): Promise<string> {
  const writing = spawn(process.execPath, [join(import.meta.dirname, 'memory-writer.ts'), ...settings])
  const said = spokenBy(writing)
  const closed = new Promise<NodeJS.Signals | null>(resolve => writing.on('close', (_, signal) => resolve(signal)))
  if (whileWriting) await Promise.race([closed, once(writing.stdout, 'data')])
  await Promise.race([closed, pause(Math.random() * (whileWriting ? longestWriting_ms : longestStart_ms))])
  writing.kill('SIGKILL')
  if ((await closed) !== 'SIGKILL') throw new Error(`the writer ended by itself: ${said.complaint()}`)
  return said.output()
}

/** Whole lines only: the last one may have been cut by the kill. */
export function acknowledgements(output: string): readonly (readonly [number, string])[] {
  const lines = output
    .slice(0, output.lastIndexOf('\n') + 1)
    .split('\n')
    .filter(Boolean)
  return lines.map(line => {
    const [number = '', id = ''] = line.split(' ')
    return [Number(number), id]
  })
}

export async function missingFrom(memory: Memory, known: ReadonlyMap<number, string>): Promise<readonly string[]> {
  const missing: string[] = []
  for (const [number, id] of known) {
    if ((await memory.questions.find(id)) !== questionOf(number)) missing.push(`question ${number}`)
  }
  const { maxRate_C } = await memory.house.rules(countingCommunity)
  const last = known.size - 1
  if (last >= 0 && (maxRate_C?.LiPo ?? -1) < last) missing.push(`house rule ${last}`)
  if (maxRate_C?.LiPo !== maxRate_C?.LiHV) missing.push('half of a change of two rules')
  return missing
}
