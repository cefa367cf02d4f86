// The charge log against common practice, published cells, and measured charges: what one charge tells of the next.

import { describe, expect, it } from 'vitest'
import { chargeTimeBand } from '../../src/charging/setting/band.ts'
import { liFe, liIon, lipo } from '../../src/charging/things/chemistries.ts'
import { interpolate } from '../../src/charging/things/curve.ts'
import * as published from '../../src/charging/things/published-curves.ts'
import { capacityLeft } from '../../src/charging/upkeep/age-signs.ts'
import { capacityReading } from '../../src/charging/upkeep/charge-note.ts'
import { meterCorrection } from '../../src/charging/upkeep/flight-meter.ts'
import { judgeLog } from '../../src/charging/upkeep/pack-log.ts'
import { requestOf } from './charges/figures.ts'
import { type ChargeRun, cellOfRun, chargeRuns } from './charges/runs.ts'

describe('the verdict', () => {
  it('retires a pack under 80 % of what it held, and calls it ageing under 90 % (common practice)', () => {
    expect(capacityLeft.value).toEqual({ ageing: 0.9, retire: 0.8 })
  })
})

describe('the capacity told by volts at rest', () => {
  // The bands are made of these cells' curves and of others: this says that they are applied the right way round.
  const cells = [
    ...published.liIonCells.map(cell => [liIon, cell] as const),
    ...published.liFeCells.map(cell => [liFe, cell] as const),
    [lipo, published.lcoPouch] as const,
  ]

  it.each(cells)('of a $0.name cell lies in its band: $1', (chemistry, { value: { soc, perCell_V } }) => {
    const pack = { chemistry, series: 1, parallel: 1, capacity_Ah: 1 }
    const { restFloor_V, full_V } = chemistry
    for (const start_V of [restFloor_V.value, restFloor_V.value + 0.05, restFloor_V.value + 0.1]) {
      const charge_Ah = interpolate(perCell_V, soc, full_V.value) - interpolate(perCell_V, soc, start_V)
      const reading = capacityReading(pack, {
        charge_Ah: Math.min(1, charge_Ah),
        from: { kind: 'rest', perCell_V: start_V },
        to: { kind: 'rest', perCell_V: full_V.value },
      })
      if (!reading) continue
      expect(reading.band_Ah.low).toBeLessThanOrEqual(1.03)
      expect(reading.band_Ah.high).toBeGreaterThanOrEqual(0.97)
    }
  })
})

describe('times by the log', () => {
  /** What a pilot would note of the run: all that went in, from where, to where, and the resistance read. */
  function logOf(run: ChargeRun) {
    const { pack, from, target } = requestOf(run)
    if (target.kind !== 'voltage') throw new Error('a run to a voltage')
    const { cellResistance_ohm, ...label } = pack
    return judgeLog(label, [
      {
        charge_Ah: run.measured_Ah * (1 - run.start),
        from,
        to: { kind: 'rest', perCell_V: target.perCell_V },
        ...(cellResistance_ohm !== undefined && { cells_ohm: [cellResistance_ohm] }),
      },
    ])
  }

  const sameAge = (one: ChargeRun, other: ChargeRun) => Math.abs(one.measured_Ah / other.measured_Ah - 1) < 0.03
  const pairs = chargeRuns.flatMap(noted =>
    chargeRuns
      .filter(run => cellOfRun(run) === cellOfRun(noted) && run !== noted && sameAge(run, noted))
      .map(asked => [noted, asked] as const),
  )
  /** The time of one run by what the other told, and how far it is off. */
  function timesOf(noted: ChargeRun, asked: ChargeRun) {
    const { capacity, resistance } = logOf(noted)
    const { measuredCapacity_Ah: _, ...request } = requestOf(asked)
    const { cellResistance_ohm: __, ...label } = request.pack
    const byLog = chargeTimeBand({
      ...request,
      pack: { ...label, ...(resistance && { cellResistance_ohm: resistance.now_ohm }) },
      ...(capacity && { measuredCapacity_Ah: capacity.now_Ah }),
    })
    return { byLog, off: Math.abs(byLog.charge.duration_s / asked.timeToTermination_s - 1) }
  }

  it('tells the next charges of a cell from one of them: within 3 % in the middle, nine of ten in the band', () => {
    const told = pairs.map(([noted, asked]) => ({ asked, ...timesOf(noted, asked) }))
    const offs = told.map(({ off }) => off).toSorted((a, b) => a - b)
    expect(told.length).toBeGreaterThan(60)
    expect(offs[offs.length >> 1]).toBeLessThan(0.03)
    const held = told.filter(
      ({ asked, byLog }) =>
        asked.timeToTermination_s >= byLog.time_s.low && asked.timeToTermination_s <= byLog.time_s.high,
    )
    expect(held.length).toBeGreaterThan(0.9 * told.length)
  })
})

describe('the count of a flight controller', () => {
  it('is mended by new = old × put back ÷ counted where more reads more, by its inverse where more reads less (from memory: how flight firmware of either kind describes it)', () => {
    const { scale } = meterCorrection([{ counted_Ah: 1.0, putBack_Ah: 1.25 }], 400) ?? {}
    expect(scale).toEqual({ raising: 500, lowering: 320 })
  })
})
