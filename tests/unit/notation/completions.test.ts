import { describe, expect, it } from 'vitest'
import { completions, mostCompletions } from '../../../src/language/kinds/completions.ts'
import { readChargeCurrent } from '../../../src/language/quantities/quantities.ts'
import { readCharger } from '../../../src/language/things/charger.ts'
import { readPack } from '../../../src/language/things/pack.ts'
import { readSource } from '../../../src/language/things/source.ts'
import { readState, readTarget } from '../../../src/language/things/state.ts'

describe('completions', () => {
  const readers: [string, (text: string) => unknown][] = [
    ['pack', readPack],
    ['charger', readCharger],
    ['source', readSource],
    ['from', text => readState(text)],
    ['to', text => readTarget(text)],
    ['current', text => readChargeCurrent(text, 1)],
  ]

  it.each(readers)('offers values of %s that can be read', (kind, read) => {
    const offered = completions(kind, '')
    expect(offered.length).toBeGreaterThan(3)
    for (const value of offered) expect(() => read(value)).not.toThrow()
  })

  it('puts packs together from what is typed', () => {
    expect(completions('pack', '3s 72').slice(0, 4)).toEqual([
      '3S 720 LiHV',
      '3S 720 LiPo',
      '3S 720 Li-ion',
      '3S 720 LiFe',
    ])
    expect(completions('pack', '7S 3333 lih')).toEqual(['7S 3333 LiHV'])
    expect(completions('pack', '2S2P 5200 ')).toContain('2S2P 5200 Li-ion')
    for (const value of completions('pack', '14S ')) expect(() => readPack(value)).not.toThrow()
  })

  it('offers no more than a surface can show, and nothing for what it does not know', () => {
    expect(completions('pack', '3S ')).toHaveLength(mostCompletions)
    expect(completions('pack', 'zebra')).toEqual([])
    expect(completions('zebra', '')).toEqual([])
  })
})
