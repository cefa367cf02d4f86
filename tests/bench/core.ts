// How fast the core and the assistant are: a charge against an ODE library, a question through dispatch, a cold start.

import { execFileSync } from 'node:child_process'
import { mkdtempSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { chargeTimeBand } from '../../src/charging/setting/band.ts'
import type { ChargeRequest } from '../../src/charging/simulation/charge.ts'
import { requestedCell, simulateCharge } from '../../src/charging/simulation/simulate.ts'
import { lihv } from '../../src/charging/things/chemistries.ts'
import { openMemory } from '../../src/memory/opening/open.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { odeCharge } from '../outside/ode-charge.ts'
import type { Row } from './benches.ts'
import { percentile, timesOf } from './timing.ts'

const cutoff_V = 4.35
const request: ChargeRequest = {
  pack: { chemistry: lihv, series: 1, parallel: 1, capacity_Ah: 0.72 },
  current_A: 0.72,
  from: { kind: 'soc', soc: 0.3 },
  target: { kind: 'voltage', perCell_V: cutoff_V },
  termination_A: 0.072,
}

const questions = [
  'current pack: 3S 720 LiHV charger: 0.5/1/2/4A 80W 1-4S 9-20V source: PD 65W',
  'time pack: 3S 720 LiHV current: 1A from: 3.7V to: full',
  'how long for 6s 1300 lipo at 2A from 3.6V',
  'can my 4s 5000 li-ion charge 6 of my 3s 720 lihv',
  'current pack: 1,234',
]

export default async function core(): Promise<Row[]> {
  return [...(await simulation()), ...(await answering()), ...coldStart()]
}

async function simulation(): Promise<Row[]> {
  const ours = await timesOf(2000, () => simulateCharge(request))
  const banded = await timesOf(500, () => chargeTimeBand(request))
  const library = await timesOf(100, () =>
    odeCharge({ cell: requestedCell(request), startSoc: 0.3, current_A: 0.72, cutoff_V, termination_A: 0.072 }),
  )
  const [ours_ms, library_ms] = [percentile(ours, 50), percentile(library, 50)]
  return [
    { name: 'one charge simulated, median', value: `${ours_ms.toFixed(3)} ms` },
    { name: 'one charge with its band over 64 cells, median', value: `${percentile(banded, 50).toFixed(3)} ms` },
    { name: 'charges simulated per second', value: (1000 / ours_ms).toFixed(0) },
    {
      name: 'the same charge by the ODE library, median',
      value: `${library_ms.toFixed(2)} ms`,
      ratio: `${(library_ms / ours_ms).toFixed(0)} times ours`,
    },
  ]
}

async function answering(): Promise<Row[]> {
  const memory = await openMemory({ dataFolder: ':memory:' })
  const faults: unknown[] = []
  const assistant = createAssistant({ commands, memory, onFault: fault => faults.push(fault) })
  const occasion = roomOccasion()
  const ask = (round: number) => assistant.answer(questions[round % questions.length] as string, occasion)
  const times = await timesOf(1000, ask)
  await memory.close()
  if (faults.length > 0) throw faults[0]
  return [
    { name: 'a question answered, median', value: `${percentile(times, 50).toFixed(2)} ms` },
    { name: 'a question answered, 99th percentile', value: `${percentile(times, 99).toFixed(2)} ms` },
  ]
}

function coldStart(): Row[] {
  const data = mkdtempSync(join(tmpdir(), 'chargehand-bench-'))
  const run = (...argv: string[]) => {
    const start = performance.now()
    execFileSync(process.execPath, argv, { env: { ...process.env, CHARGEHAND_DATA: data } })
    return performance.now() - start
  }
  const ask = () => run('src/room/ask.ts', questions[1] as string)
  ask()
  const rounds = Array.from({ length: 5 }, () => ({ ask_ms: ask(), node_ms: run('-e', '0') }))
  const ask_ms = percentile(
    rounds.map(round => round.ask_ms),
    50,
  )
  const node_ms = percentile(
    rounds.map(round => round.node_ms),
    50,
  )
  return [
    {
      name: 'cold start to the first answer, median of 5',
      value: `${ask_ms.toFixed(0)} ms`,
      ratio: `${(ask_ms / node_ms).toFixed(1)} times Node doing nothing, ${node_ms.toFixed(0)} ms`,
    },
  ]
}
