// Numbers about the assistant at work, for Prometheus.

import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import { lookedUp } from '../assistant/lookup.ts'
import { isUnread } from '../assistant/moderating/digest.ts'
import type { Reply } from '../assistant/reply.ts'
import type { Assistant } from '../assistant/running/assistant.ts'
import type { DueMemory, Waiting } from '../memory/due.ts'
import type { Workers } from '../program/workers/workers.ts'

export interface Metrics {
  readonly contentType: string
  /** All numbers in Prometheus' text format. */
  text(): Promise<string>
  /** The same assistant, its answers counted and timed. */
  measured(assistant: Assistant): Assistant
}

/** `work` says what of plans and pictures waits for a worker, `due` what waits for its time or for another try. */
export function createMetrics(work: Pick<Workers, 'waiting' | 'waited_s'>, due: Pick<DueMemory, 'waiting'>): Metrics {
  const registry = new Registry()
  collectDefaultMetrics({ register: registry })
  addDue(registry, due)
  const addWork = (named: { name: string; help: string }, read: () => number) =>
    new Gauge({
      ...named,
      registers: [registry],
      collect() {
        this.set(read())
      },
    })
  addWork({ name: 'chargehand_work_waiting', help: 'Plans and pictures that wait for a worker' }, work.waiting)
  addWork({ name: 'chargehand_work_wait_seconds', help: 'Longest wait since this was last read' }, work.waited_s)
  const answers = new Counter({
    name: 'chargehand_answers_total',
    help: 'Questions answered, by command, surface and outcome',
    labelNames: ['command', 'surface', 'outcome'],
    registers: [registry],
  })
  const seconds = new Histogram({
    name: 'chargehand_answer_seconds',
    help: 'Time from a question to its reply, before it is rendered and sent',
    labelNames: ['surface'],
    buckets: [0.001, 0.002, 0.005, 0.01, 0.05, 0.1, 0.5, 1, 2],
    registers: [registry],
  })
  return {
    contentType: registry.contentType,
    text: () => registry.metrics(),
    measured: assistant => ({
      ...assistant,
      answer: async (question, occasion) => {
        const { surface } = occasion
        const start_ms = performance.now()
        const reply = await assistant.answer(question, occasion)
        seconds.observe({ surface }, (performance.now() - start_ms) / 1000)
        answers.inc({ command: knownCommand(assistant, reply), surface, outcome: outcomeOf(reply) })
        return reply
      },
    }),
  }
}

/** Of all replicas on one memory together, and whether that can be asked at all. */
function addDue(registry: Registry, due: Pick<DueMemory, 'waiting'>): void {
  let reading: Promise<readonly Waiting[] | undefined> | undefined
  /** Once for all numbers. */
  const read = () => {
    reading ??= lookedUp(due.waiting()).finally(() => {
      reading = undefined
    })
    return reading
  }
  const add = ({ name, help }: { name: string; help: string }, of: (waiting: Waiting) => number) =>
    new Gauge({
      name,
      help,
      labelNames: ['kind'],
      registers: [registry],
      async collect() {
        const all = await read()
        this.reset()
        for (const one of all ?? []) this.set({ kind: one.kind }, of(one))
      },
    })
  const late_s = ({ firstDueAt }: Waiting) => Math.max(0, (Date.now() - firstDueAt.getTime()) / 1000)
  add({ name: 'chargehand_due_waiting', help: 'Questions, reminders, cards, rounds to come' }, ({ count }) => count)
  add({ name: 'chargehand_due_retried', help: 'Of them those tried before, in vain' }, ({ retried }) => retried)
  add({ name: 'chargehand_due_late_seconds', help: 'How long the first of them has been due' }, late_s)
  new Gauge({
    name: 'chargehand_memory_up',
    help: 'Whether the memory answers',
    registers: [registry],
    async collect() {
      this.set((await read()) ? 1 : 0)
    },
  })
}

/** What a person typed must not become a label of its own: each new one costs memory for good. */
function knownCommand({ registry }: Assistant, { command }: Reply): string {
  return registry.find(command) ? command : 'none'
}

function outcomeOf(reply: Reply): string {
  const { fault, tooFast, problem, verdict } = reply
  if (fault !== undefined) return 'fault'
  if (tooFast) return 'too fast'
  if (isUnread(reply)) return 'not understood'
  return problem ? 'problem' : (verdict ?? 'answered')
}
