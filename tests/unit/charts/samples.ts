// Charts of every kind for the tests, of an invented club's packs.

import { chargeTimeBand } from '../../../src/charging/setting/band.ts'
import { lihv } from '../../../src/charging/things/chemistries.ts'
import { chargeChart } from '../../../src/charts/charge-chart.ts'
import type { LineChart, TimelineChart } from '../../../src/charts/chart.ts'
import { planChart } from '../../../src/charts/plan-chart.ts'
import { english } from '../../../src/ground/locale.ts'

export const locale = english('.')
export const { show, own } = locale

export const { charge: wrenCharge, time_s: wrenEnd_s } = chargeTimeBand({
  pack: { chemistry: lihv, series: 3, parallel: 1, capacity_Ah: 0.72 },
  current_A: 1,
  from: { kind: 'rest', perCell_V: 3.7 },
  target: { kind: 'voltage', perCell_V: 4.35 },
})

export const chargeSample: LineChart = chargeChart({
  what: own('3S 720mAh LiHV, 1 A to 4.35 V'),
  charge: wrenCharge,
  end_s: wrenEnd_s,
  locale,
})

export const planSample: TimelineChart = planChart({
  charges: [
    { pack: own('wren'), port: own('port 1'), setting: own('1 A to 4.35 V'), start_s: 0, end_s: 1860 },
    { pack: own('heron'), port: own('port 2'), setting: own('2 A to 4.20 V'), start_s: 0, end_s: 2400 },
    { pack: own('swift'), port: own('port 1'), setting: own('0.5 A to 4.35 V'), start_s: 1860, end_s: 2280 },
  ],
  readyBy_s: 2700,
  locale,
})
