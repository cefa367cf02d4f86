// How long a picture takes: the first one, which loads what draws, and those after it.

import { chargeTimeBand } from '../../src/charging/setting/band.ts'
import { lihv } from '../../src/charging/things/chemistries.ts'
import { chargeChart } from '../../src/charts/charge-chart.ts'
import { drawPng, drawSvg } from '../../src/charts/drawing/draw.ts'
import { english } from '../../src/ground/locale.ts'
import type { Row } from './benches.ts'
import { percentile, timesOf } from './timing.ts'

const pictures = 40

export default async function charts(): Promise<Row[]> {
  const { charge, time_s } = chargeTimeBand({
    pack: { chemistry: lihv, series: 3, parallel: 1, capacity_Ah: 0.72 },
    current_A: 1,
    from: { kind: 'rest', perCell_V: 3.7 },
    target: { kind: 'voltage', perCell_V: 4.35 },
  })
  const locale = english('.')
  const chart = chargeChart({ what: locale.own('3S 720mAh LiHV, 1 A'), charge, end_s: time_s, locale })
  const start = performance.now()
  await drawPng(chart)
  const first_ms = performance.now() - start
  const png_ms = await timesOf(pictures, () => drawPng(chart))
  const svg_ms = await timesOf(pictures, () => drawSvg(chart))
  return [
    { name: 'first picture, loading included', value: `${first_ms.toFixed(0)} ms` },
    {
      name: 'PNG of a charge, median (slowest of 40)',
      value: `${percentile(png_ms, 50).toFixed(0)} ms (${Math.max(...png_ms).toFixed(0)})`,
      ratio: `${(percentile(png_ms, 50) / percentile(svg_ms, 50)).toFixed(1)} times the SVG alone, ${percentile(svg_ms, 50).toFixed(0)} ms`,
    },
  ]
}
