// From the start of the program to its first answer: on a machine that never ran it, and on one that did.

import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Row } from './benches.ts'
import { percentile } from './timing.ts'

const rounds = 9
const asked = ['--min-semi-space-size=4', 'src/room/ask.ts', 'what current for 3S 720mAh LiHV']

export default async function start(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'))
  const cache = join(folder, 'compiled')
  const env = { ...process.env, NODE_COMPILE_CACHE: cache, CHARGEHAND_DATA: join(folder, 'data') }
  const took_ms = (args: readonly string[]): number => {
    const before = performance.now()
    const { status, stderr } = spawnSync(process.execPath, args, { env })
    if (status !== 0) throw new Error(String(stderr))
    return performance.now() - before
  }
  const times = (args: readonly string[], isCold = false) =>
    Array.from({ length: rounds }, () => {
      if (isCold) rmSync(cache, { recursive: true, force: true })
      return took_ms(args)
    })
  try {
    const [cold_ms, warm_ms] = [times(asked, true), times(asked)]
    const bare_ms = percentile(times(['-e', '0']), 50)
    const row = (name: string, taken_ms: readonly number[]): Row => ({
      name: `first answer, ${name}, median (quickest of ${rounds})`,
      value: `${percentile(taken_ms, 50).toFixed(0)} ms (${Math.min(...taken_ms).toFixed(0)})`,
      ratio: `${(percentile(taken_ms, 50) / bare_ms).toFixed(1)} times Node alone, ${bare_ms.toFixed(0)} ms`,
    })
    return [row('nothing compiled', cold_ms), row('compiled before', warm_ms)]
  } finally {
    rmSync(folder, { recursive: true })
  }
}
