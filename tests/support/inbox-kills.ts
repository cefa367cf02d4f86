// Kills an assistant while it is asked, starts another on the same memory, asks again, and counts what was done how often.

import { type ChildProcessByStdio, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Readable, Writable } from 'node:stream'
import { setTimeout as pause } from 'node:timers/promises'
import type { Memory } from '../../src/memory/memory.ts'
import { openMemory } from '../../src/memory/opening/open.ts'
import { spokenBy } from './spoken.ts'
import { testDatabaseUrl } from './test-memory.ts'

export interface InboxReport {
  readonly kills: number
  readonly asked: number
  /** Comings of a question beyond its first. */
  readonly replays: number
  readonly doubled: readonly string[]
  /** Accepted before a kill, or asked until it was answered, and yet not done. */
  readonly lost: readonly string[]
  /** Done, and no answer went out. */
  readonly unanswered: readonly string[]
  /** Answers beyond the first, told apart by nothing but their key: what a platform that knows keys shows once. */
  readonly answeredAgain: number
  readonly faults: readonly string[]
}

interface Asked {
  readonly id: string
  readonly person: string
  readonly question: string
  /** A platform that tells of it until it is answered; else it comes once, and counts where it was accepted. */
  readonly comesAgain: boolean
}

const roundsEach = 10
const questionsEach = 12
/** Nobody is left alone with a question of the round before; who took one for the loop is until the very last. */
const ahead_s = 31
const atLast = roundsEach + 5

/** None of it does the same where it is done twice. */
const questions = ['remind me in: 45min', 'log charge name: wren put-back: 640mAh', 'undo']

export async function inboxKills(rounds: number): Promise<InboxReport> {
  const report = { doubled: [] as string[], lost: [] as string[], unanswered: [] as string[], faults: [] as string[] }
  const count = { kills: 0, asked: 0, replays: 0, answeredAgain: 0 }
  while (count.kills < rounds) {
    const dataFolder = await mkdtemp(join(tmpdir(), 'chargehand-inbox-'))
    const databaseUrl = await testDatabaseUrl()
    const memory = await openMemory({ dataFolder, databaseUrl })
    const all: Asked[] = []
    const answers = new Map<string, number>()
    const accepted = new Set<string>()
    const hear = async (comes: readonly Asked[], round: number, toTheEnd: boolean) => {
      const args = [dataFolder, String(round * ahead_s), databaseUrl ?? '']
      for (const { delivered, fault } of await ask(comes, args, toTheEnd)) {
        if (fault !== undefined) report.faults.push(fault)
        if (delivered !== undefined) answers.set(delivered, (answers.get(delivered) ?? 0) + 1)
      }
    }
    try {
      for (let round = 0; round < roundsEach; round += 1) {
        const fresh = Array.from({ length: questionsEach }, (_, at) => newQuestion(`${round}.${at}`, at))
        for (const { person } of fresh) await equip(person, memory, new Date(Date.now() + round * ahead_s * 1000))
        const old = all.filter(({ id, comesAgain }) => comesAgain && (!answers.has(id) || Math.random() < 0.1))
        const twice = fresh.filter(({ comesAgain }) => comesAgain && Math.random() < 0.3)
        all.push(...fresh)
        await hear(shuffled([...old, ...fresh, ...twice]), round, false)
        for (const { id } of fresh) if (await memory.due.find(id)) accepted.add(id)
        count.kills += 1
        count.replays += old.length + twice.length
      }
      // Nobody kills these: the first hears what is told until it is answered, the second delivers what still waits.
      const open = all.filter(({ id, comesAgain }) => comesAgain && !answers.has(id))
      await hear(open, roundsEach, true)
      await hear([], atLast, true)
      count.asked += all.length
      for (const one of all) {
        const [times, told] = [await timesDone(one, memory), answers.get(one.id) ?? 0]
        const name = `${one.id} ${one.question}`
        if (times > 1) report.doubled.push(name)
        if (times === 0 && (one.comesAgain || accepted.has(one.id))) report.lost.push(name)
        if (times > 0 && told === 0) report.unanswered.push(name)
        count.answeredAgain += Math.max(0, told - 1)
      }
    } finally {
      await memory.close()
      await rm(dataFolder, { recursive: true })
    }
  }
  return { ...count, ...report }
}

const newQuestion = (id: string, at: number): Asked => ({
  id: `room:${id}`,
  person: `room:somebody-${id}`,
  question: questions[at % questions.length] ?? '',
  comesAgain: Math.random() < 0.5,
})

const shuffled = <T>(some: readonly T[]): readonly T[] =>
  some
    .map(one => [Math.random(), one] as const)
    .toSorted(([a], [b]) => a - b)
    .map(([, one]) => one)

const versions = ['3S 720mAh LiHV', '3S 850mAh LiHV', '3S 1000mAh LiHV']

/** A pack to note charges of, changed twice of late. */
async function equip(person: string, { history }: Memory, at: Date): Promise<void> {
  const by = { community: 'room:club', person, name: 'Somebody', at }
  const entries = versions.map(
    notation => ({ owner: { scope: 'person', id: person }, name: 'wren', kind: 'pack', notation }) as const,
  )
  for (const [index, after] of entries.entries())
    await history.noting(by, async ({ kit }) => {
      await kit.save(after, 1)
      return { result: undefined, change: { of: 'kit', before: entries[index - 1], after } }
    })
}

async function timesDone({ person, question }: Asked, memory: Memory): Promise<number> {
  const owner = { scope: 'person', id: person } as const
  if (question.startsWith('remind')) return (await memory.reminders.of(person)).length / 2
  if (question.startsWith('log')) return (await memory.log.of(owner, 'wren')).length
  const [wren] = await memory.kit.find([owner], ['wren'])
  return versions.length - 1 - versions.indexOf(wren?.notation ?? '')
}

interface Line {
  readonly ready?: true
  readonly delivered?: string
  readonly fault?: string
}

async function ask(comes: readonly Asked[], args: readonly string[], toTheEnd: boolean): Promise<readonly Line[]> {
  const child: ChildProcessByStdio<Writable, Readable, Readable> = spawn(
    process.execPath,
    [join(import.meta.dirname, 'inbox-process.ts'), ...args],
    { stdio: ['pipe', 'pipe', 'pipe'] },
  )
  const said = spokenBy(child)
  const closed = once(child, 'close')
  child.stdin.on('error', () => {})
  for (const one of comes) child.stdin.write(`${JSON.stringify(one)}\n`)
  if (toTheEnd) child.stdin.end()
  else {
    await Promise.race([closed, once(child.stdout, 'data')])
    await Promise.race([closed, pause(Math.random() * 250)])
    child.kill('SIGKILL')
  }
  const [code, signal] = await closed
  if (toTheEnd ? code !== 0 : signal !== 'SIGKILL') throw new Error(`it ended by itself: ${said.complaint()}`)
  const whole = said.output().slice(0, said.output().lastIndexOf('\n') + 1)
  return whole
    .split('\n')
    .filter(Boolean)
    .map(line => JSON.parse(line))
}
