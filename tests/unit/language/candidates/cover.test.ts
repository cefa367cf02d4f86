import { describe, expect, it } from 'vitest'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'

const cover = (text: string) => bestCover(candidatesOf(text)).map(({ kind, text }) => `${kind} ${text}`)

describe('the best whole reading', () => {
  it.each([
    ['how long for my 4s1500 lipo at 2a from 3.7', 'pack 4S 1500mAh LiPo', 'current 2A', 'state 3.7V'],
    ['2 x 3S', 'count 2', 'pack 3S'],
    ['12.4v on my 3s 2200, to full', 'state 12.4V pack', 'pack 3S 2200mAh', 'state full'],
    ['charge my 3s 2200 off my 4s 5000 li-ion', 'pack 3S 2200mAh', 'source 4S 5000mAh Li-ion'],
    ['four s fifteen hundred at one and a half amps', 'pack 4S 1500mAh', 'current 1.5A'],
    ['4s 1500 2C', 'pack 4S 1500mAh', 'rate 2C'],
    ['is 50C in the sun too hot', 'temperature 50°C'],
    ['50W charger with a 12v 60ah car battery at 12.5', 'charger 50W charger', 'source car battery rest 12.5V 60Ah'],
    ['what is a lipo'],
    ['thanks a lot, see you saturday', 'clock saturday'],
  ])('of %j', (text, ...expected) => {
    const found = cover(text)
    if (expected.length > 0) expect(found).toEqual(expected)
    else expect(found.every(one => one.startsWith('chemistry'))).toBe(true)
  })

  it.each(['my 3s is dead', '3s at 0%', 'stone dead 4s'])('asks about %j', text => {
    expect(bestCover(candidatesOf(text))).toContainEqual(expect.objectContaining({ kind: 'state', text: '', score: 0 }))
  })

  it('gives the words around a value', () => {
    expect(
      candidatesOf('from about 3.7 V up to 4.1 please').map(({ text, cue, next }) => ({ text, cue, next })),
    ).toEqual(
      expect.arrayContaining([
        { text: '3.7V', cue: 'from', next: 'up' },
        { text: '4.1V', cue: 'to', next: 'please' },
      ]),
    )
  })
})
