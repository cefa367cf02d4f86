// Which rule speaks to which situation, and which ones refuse it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge } from '../../../src/charging/envelope/judge.ts'
import type { Told } from '../../../src/charging/situation/situation.ts'
import type { Charger } from '../../../src/charging/things/charger.ts'
import { liFe, lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import { english } from '../../../src/ground/locale.ts'
import { linesOf } from '../../../src/handbook/rules/index.ts'
import { cases } from '../../support/cases.ts'
import { judged, refusedBy } from '../../support/judged.ts'
import { allDangers, someBoard, somePlanned, someSituation } from '../../support/situations.ts'

const pack = (chemistry: Pack['chemistry'], series = 3, capacity_Ah = 0.72, more = {}): Pack => ({
  chemistry,
  series,
  parallel: 1,
  capacity_Ah,
  ...more,
})
const charging = (told: Partial<Told> = {}): Told => ({ act: 'charge', ...told })
const charger = (more: Partial<Charger> = {}): Charger => ({
  currents: { kind: 'list', steps_A: [0.5, 1, 2, 4] },
  ...more,
})
const resting = (perCell_V: number) => ({ kind: 'rest', perCell_V }) as const
const keys = (told: Told) => judged(told).found.map(({ key }) => key)
const wren = pack(lihv)

describe('a word of care', () => {
  it.each<[string, Partial<Told>]>([
    ['onlyAsLabelled', { pack: pack(lihv) }],
    ['neverOtherMode', { pack: pack(liFe) }],
    ['batterySource', { source: { kind: 'battery', pack: pack(liIon, 4) } }],
    ['starter', { source: { kind: 'vehicle outlet', fuse_A: 10, engine: 'off' } }],
    ['engineRuns', { source: { kind: 'vehicle outlet', fuse_A: 10, engine: 'running' } }],
    ['powerBank', { source: { kind: 'power bank', label_Wh: 74 } }],
    ['cold', { pack: pack(lipo), temperature_C: 7 }],
    ['warm', { pack: pack(lipo), temperature_C: 44 }],
    ['singleCell', { pack: pack(lipo, 1) }],
    ['balance', { pack: pack(lipo) }],
    ['thickLeads', { pack: pack(lipo, 3, 6), current_A: 6 }],
    ['belowFloor', { pack: pack(lipo), from: resting(3.2) }],
    ['labelRate', { pack: pack(lipo, 3, 1, { labelRate_C: 2 }) }],
  ])('%s where it fits, and not where nothing calls for it', (key, told) => {
    expect(keys(charging(told))).toContain(key)
    expect(keys(charging())).not.toContain(key)
  })

  it('of the other full voltage goes to no LiPo pilot, nor of a low cell at 3.8 V', () => {
    const spoken = keys(charging({ pack: pack(lipo), from: resting(3.8) }))
    expect(spoken).not.toContain('onlyAsLabelled')
    expect(spoken).not.toContain('belowFloor')
  })
})

describe('a refusal', () => {
  it.each<[string, Partial<Told>]>([
    ['deadCell', { pack: wren, from: resting(2.1) }],
    ['overCharged', { pack: pack(lipo), from: resting(4.3) }],
    ['tooHot', { pack: wren, temperature_C: 70 }],
    ['tooHot', { pack: wren, temperature_C: 45.1 }],
    ['tooCold', { pack: wren, temperature_C: -1 }],
    ['cutoffAboveFull', { pack: pack(liFe), to: resting(4.2) }],
    ['cutoffTooLow', { pack: wren, to: resting(3) }],
    ['tooManyCells', { pack: pack(lipo, 6), charger: charger({ maxSeries: 4 }) }],
    ['noLeadToSee', { pack: pack(lipo, 1, 1), charger: charger({ needsBalanceLead: true }) }],
    ['stepTooLarge', { pack: pack(lipo, 1, 0.2), charger: charger() }],
    ['noFittingCutoff', { pack: pack(liFe), charger: charger({ cutoffs_V: [4.2, 4.35] }) }],
    ['noFittingCutoff', { pack: pack(lipo), charger: charger({ cutoffs_V: [3.6] }) }],
    [
      'inputOutside',
      {
        pack: wren,
        charger: charger({ minInput_V: 9 }),
        source: { kind: 'supply', offers: [{ voltage_V: 5, current_A: 3 }] },
      },
    ],
    ['sourceAtFloor', { pack: wren, source: { kind: 'battery', pack: pack(liIon, 4, 5) }, sourceSoc: 0 }],
  ])('is %s', (key, told) => {
    expect(refusedBy(charging(told))).toContain(key)
  })

  it('leaves the borders alone: 0 and 45 °C are inside, and a lead that a charger wants', () => {
    const strict = charger({ needsBalanceLead: true })
    expect(refusedBy(charging({ pack: wren, temperature_C: 0 }))).toEqual([])
    expect(refusedBy(charging({ pack: wren, temperature_C: 45 }))).toEqual([])
    expect(refusedBy(charging({ pack: pack(lipo, 1, 1), charger: strict, balanceLead: true }))).toEqual([])
  })

  it.each<[string, RegExp, Partial<Told>]>([
    [
      'a charger too coarse, with the smallest pack that suits, rounded up',
      /step.* 0\.5 A.* 0\.4 A.* 250 mAh/,
      { pack: pack(lipo, 1, 0.2), charger: charger() },
    ],
    ['heat', /70 °C.*shade/, { pack: wren, temperature_C: 70 }],
    ['cold', /-3 °C.*[Ww]arm/, { pack: wren, temperature_C: -3 }],
    [
      'an input out of reach',
      /9 V/,
      {
        pack: wren,
        charger: charger({ minInput_V: 9 }),
        source: { kind: 'supply', offers: [{ voltage_V: 5, current_A: 3 }] },
      },
    ],
    ['cells that are too many', /4S/, { pack: pack(lipo, 6), charger: charger({ maxSeries: 4 }) }],
    ['the full voltage when more is asked for', /4\.20 V.*3\.60 V/, { pack: pack(liFe), to: resting(4.2) }],
  ])('tells %s', (_, words, told) => {
    const [found] = judged(charging(told)).found
    const said = found && linesOf(found, english('.')).join(' ').replaceAll('\u00a0', ' ')
    expect(said).toMatch(words)
  })
})

it('no rule shouts, and none advises to leave a charge alone', () => {
  const locale = english('.')
  fc.assert(
    fc.property(
      fc.oneof(someSituation('charge', 'drain', 'store', 'carry', 'look'), someBoard),
      somePlanned,
      fc.subarray(allDangers),
      (situation, planned, dangers) => {
        for (const found of judge({ ...situation, dangers }, planned).found) {
          const said = linesOf(found, locale).join(' ')
          expect(said).not.toMatch(/!|\b(?!JEITA)[A-Z]{5,}/)
          expect(said).not.toMatch(/unattended|leave it (?:to|on)/i)
        }
      },
    ),
    cases(2_000),
  )
})
