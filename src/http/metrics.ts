// Numbers about the assistant at work, for Prometheus.

import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client'
import type { Reply } from '../assistant/reply.ts'
import type { Assistant } from '../assistant/running/assistant.ts'

export interface Metrics {
  readonly contentType: string
  /** All numbers in Prometheus' text format. */
  text(): Promise<string>
  /** The same assistant, its answers counted and timed. */
  measured(assistant: Assistant): Assistant
}

/** `waiting` says how many plans and pictures wait for a worker. */
export function createMetrics(waiting: () => number = () => 0): Metrics {
  const registry = new Registry()
  collectDefaultMetrics({ register: registry })
  new Gauge({
    name: 'chargehand_work_waiting',
    help: 'Plans and pictures that wait for a worker',
    registers: [registry],
    collect() {
      this.set(waiting())
    },
  })
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
        const stop = seconds.startTimer({ surface })
        const reply = await assistant.answer(question, occasion)
        stop()
        answers.inc({ command: knownCommand(assistant, reply), surface, outcome: outcomeOf(reply) })
        return reply
      },
    }),
  }
}

/** What a person typed must not become a label of its own: each new one costs memory for good. */
function knownCommand({ registry }: Assistant, { command }: Reply): string {
  return registry.find(command) ? command : 'none'
}

function outcomeOf({ fault, problem, verdict }: Reply): string {
  if (fault !== undefined) return 'fault'
  if (problem) return 'problem'
  return verdict ?? 'answered'
}
