// Which cautions an answer carries.

import { describe, expect, it } from 'vitest'
import { cautionsFor, generalCaution } from '../../../src/cautions/cautions.ts'
import { rules } from '../../../src/cautions/rules.ts'
import type { Situation } from '../../../src/cautions/situation.ts'
import { liFe, lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'

const pack = (chemistry: Pack['chemistry'], series = 3): Pack => ({
  chemistry,
  series,
  parallel: 1,
  capacity_Ah: 0.72,
})
const keys = (situation: Situation) => cautionsFor(situation).map(({ key }) => key)

describe('cautionsFor', () => {
  it('has something to say when nothing is known, and never more than four sentences', () => {
    expect(keys({})).toEqual(['inspect', generalCaution.key])
    const crowded: Situation = {
      pack: pack(lihv, 1),
      source: { kind: 'battery', pack: pack(liIon, 4) },
      current_A: 9,
      highest_A: 1,
      input_A: 12,
      restPerCell_V: 2.8,
      temperature_C: 5,
      refusal: 'damaged cell',
    }
    expect(keys(crowded)).toEqual(['retire', 'aboveAdvised', 'lowCell', generalCaution.key])
  })

  it.each<[string, Situation]>([
    ['onlyHighVoltage', { pack: pack(lihv) }],
    ['neverLipoMode', { pack: pack(liFe) }],
    ['watchTheSource', { source: { kind: 'battery', pack: pack(liIon, 4) } }],
    ['keepTheStarter', { source: { kind: 'vehicle outlet', fuse_A: 10, engine: 'off' } }],
    ['parkInTheOpen', { source: { kind: 'vehicle outlet', fuse_A: 10, engine: 'running' } }],
    ['bankInTheShade', { source: { kind: 'power bank', label_Wh: 74 } }],
    ['cable', { source: { kind: 'supply', offers: [], usbPd_W: 100 }, input_A: 4 }],
    ['warmItFirst', { temperature_C: 5 }],
    ['letItCool', { temperature_C: 44 }],
    ['keepAway', { refusal: 'overcharged cell' }],
    ['singleCell', { pack: pack(lipo, 1) }],
    ['balance', { pack: pack(lipo) }],
    ['thickLeads', { current_A: 6 }],
    ['lowCell', { pack: pack(lipo), restPerCell_V: 3.2 }],
    ['labelRate', { pack: { ...pack(lipo), labelRate_C: 2 } }],
  ])('gives %s where it fits, and not where nothing calls for it', (key, situation) => {
    expect(keys(situation)).toContain(key)
    expect(keys({})).not.toContain(key)
  })

  it('does not speak of LiHV to a LiPo pilot, nor of a low cell at 3.8 V', () => {
    const spoken = keys({ pack: pack(lipo), restPerCell_V: 3.8 })
    expect(spoken).not.toContain('onlyHighVoltage')
    expect(spoken).not.toContain('lowCell')
  })

  it('names every rule once and shouts in none', () => {
    expect(new Set(rules.map(({ key }) => key)).size).toBe(rules.length)
    for (const { text } of rules) expect(text).not.toMatch(/!|[A-Z]{5,}/)
  })

  it('never advises leaving a charge alone', () => {
    for (const { text } of [...rules, generalCaution])
      expect(text).not.toMatch(/unattended|leave it (?:to|on)/i)
  })
})
