// A worker: does what it is given, and leaves nothing behind.

import { setImmediate } from 'node:timers/promises'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { planField } from '../../charging/plan/plan.ts'
import type { Chart } from '../../charts/chart.ts'
import { drawPng } from '../../charts/drawing/draw.ts'
import type { Theme } from '../../charts/drawing/theme.ts'

setFlagsFromString('--expose-gc')
const collect: () => void = runInNewContext('gc')

export const plan = planField

/** Pixels lie outside the heap, where V8 does not see them pile up: five megabytes a picture. */
export async function draw({ chart, theme }: { chart: Chart; theme?: Theme }): Promise<Buffer> {
  const png = await drawPng(chart, theme)
  collect()
  // What was collected is given back when the loop turns, and Piscina would wait for the next task without.
  await setImmediate()
  return png
}
