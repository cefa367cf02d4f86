import { describe, expect, it } from 'vitest'
import { chargeChart } from '../../../src/charts/charge-chart.ts'
import { drainChart } from '../../../src/charts/drain-chart.ts'
import { placeLabel } from '../../../src/charts/drawing/bar-label.ts'
import { logChart } from '../../../src/charts/log-chart.ts'
import { planChart } from '../../../src/charts/plan-chart.ts'
import { timeAxis } from '../../../src/charts/time-axis.ts'
import { english } from '../../../src/ground/locale.ts'
import { chargeSample, locale, own, planSample, show, wrenCharge, wrenEnd_s } from './samples.ts'

describe('the chart of a charge', () => {
  it('ends each stage where the charge does', () => {
    expect(chargeSample.marks?.map(({ label }) => label)).toEqual(wrenCharge.stages.map(({ kind }) => kind))
    expect(chargeSample.marks?.at(-1)?.x).toBeCloseTo(wrenCharge.duration_s / 60, 6)
  })

  it('has volts and amps in minutes, the last point at the end', () => {
    const [volts, amps] = chargeSample.series
    expect(volts?.points.at(-1)?.[0]).toBeCloseTo(wrenCharge.duration_s / 60, 6)
    expect(volts?.points.at(-1)?.[1]).toBeCloseTo(4.35, 3)
    expect(amps?.points[0]?.[1]).toBeCloseTo(1, 6)
    expect(amps?.axis).toBe(1)
  })

  it('shades the band and says it in words', () => {
    expect(chargeSample.band).toMatchObject({ from: wrenEnd_s.low / 60, to: wrenEnd_s.high / 60 })
    const span = `${show.roughly(wrenEnd_s.low, Math.floor)} to ${show.roughly(wrenEnd_s.high, Math.ceil)}`
    expect(chargeSample.band?.label).toContain(span)
    expect(chargeSample.alternative).toContain(span)
  })

  it("writes numbers in the community's format", () => {
    const chart = chargeChart({ what: own('wren'), charge: wrenCharge, end_s: wrenEnd_s, locale: english(',') })
    expect(chart.decimalMark).toBe(',')
    expect(chart.alternative).toContain('4,35')
  })
})

describe('the time along a chart', () => {
  it('is in minutes to five hours, then in hours', () => {
    expect(timeAxis(18_000)).toMatchObject({ unit: 'minutes' })
    expect(timeAxis(18_000).at(600)).toBe(10)
    expect(timeAxis(18_001)).toMatchObject({ unit: 'hours' })
    expect(timeAxis(18_001).at(7200)).toBe(2)
  })
})

describe('the chart of a drain', () => {
  const points = [
    { time_s: 0, voltage_V: 16 },
    { time_s: 3600, voltage_V: 13.2 },
  ]
  const drained = (packs: number) =>
    drainChart({
      what: own('4S 5000mAh Li-ion feeds packs'),
      points,
      floor_V: 12,
      packEnds_s: Array.from({ length: packs }, (_, i) => i * 100),
      locale,
    })

  it('draws the floor and says both it and the lowest volts', () => {
    expect(drained(2).level?.y).toBe(12)
    expect(drained(2).alternative).toMatch(/13\.2.V in 1.h; the floor at which to stop is 12.V/)
  })

  it('numbers many packs instead of naming them', () => {
    expect(drained(2).marks?.[1]?.label).toBe('pack 2')
    expect(drained(7).marks?.[6]?.label).toBe('7')
    expect(drained(17).marks).toBeUndefined()
  })
})

describe('the chart of a plan', () => {
  it('has a row a pack in the order of their start, and the port as group', () => {
    expect(planSample.rows).toEqual(['wren', 'heron', 'swift'])
    expect(planSample.bars[2]).toEqual({ row: 'swift', from: 31, to: 38, label: '0.5 A to 4.35 V', group: 'port 1' })
    expect(planSample.marks).toEqual([{ x: 45, label: 'ready by' }])
  })

  it('tells every charge in words', () => {
    expect(planSample.alternative).toMatch(/swift on port 1, 0\.5 A to 4\.35 V, 31.min to 38.min/)
    expect(planChart({ charges: [], locale }).bars).toEqual([])
  })
})

describe('the label of a bar', () => {
  const bar = { row: own('wren'), from: 40, to: 45, label: own('1 A to 4.35 V') }
  const chart = { ...planSample, rows: [own('wren')], marks: [] }
  const place = (bars: (typeof bar)[], one = bar) => placeLabel(one, { ...chart, bars }, 3, 100)

  it('goes inside, right, left, or is cut, as there is room', () => {
    const long = { ...bar, to: 90 }
    expect(place([long], long)).toMatchObject({ text: bar.label, outside: false })
    expect(place([bar]).at_px).toBeGreaterThan(0)
    expect(place([bar, { ...bar, from: 50, to: 80 }]).at_px).toBeLessThan(0)
    expect(place([bar, { ...bar, from: 50, to: 80 }, { ...bar, from: 0, to: 38 }]).text).not.toBe(bar.label)
  })

  it('keeps off a mark where it can', () => {
    const marked = { ...chart, bars: [bar], marks: [{ x: 50, label: own('ready by') }] }
    expect(placeLabel(bar, marked, 3, 100).at_px).toBeLessThan(0)
  })
})

describe('the chart of a log', () => {
  const day = (n: number) => new Date(Date.UTC(2026, 4, n))
  const points = [
    { at: day(1), capacity_Ah: 0.72, cellResistance_ohm: 0.012 },
    { at: day(20), capacity_Ah: 0.65 },
  ]

  it('has a reading each and an axis a quantity', () => {
    const chart = logChart({ pack: own('wren'), points, retire_Ah: 0.576, locale })
    expect(chart.yLabels).toEqual(['mAh', 'mΩ'])
    expect(chart.series.map(({ points }) => points.length)).toEqual([2, 1])
    expect(chart.level?.y).toBeCloseTo(576)
    expect(chart.alternative).toMatch(/capacity 720.mAh on 2026-05-01, 650.mAh on 2026-05-20/)
  })

  it('has the resistance alone on the first axis', () => {
    const chart = logChart({ pack: own('wren'), points: [{ at: day(1), cellResistance_ohm: 0.012 }], locale })
    expect(chart.yLabels).toEqual(['mΩ'])
    expect(chart.series[0]?.axis).toBe(0)
  })
})
