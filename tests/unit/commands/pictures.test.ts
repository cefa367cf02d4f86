import { beforeAll, describe, expect, it } from 'vitest'
import type { Reply } from '../../../src/assistant/reply.ts'
import { drawPng } from '../../../src/charts/drawing/draw.ts'
import { type Asking, askingOf } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'

const time = commandNamed('time')
const source = commandNamed('source')

let asking: Asking
beforeAll(async () => {
  asking = await askingOf([time, source])
})

const figure = (reply: Reply, key: string) => reply.figures.find(one => one.key === key)

describe('pictures', () => {
  it('go with a charge, and end when the answer says', async () => {
    const reply = await asking.ask('time pack: 3S 720 LiHV current: 1A from: 3.7V per cell to: full')
    const [chart] = reply.charts
    if (chart?.kind !== 'lines') throw new Error('a charge has a line chart')
    expect(chart.marks?.at(-1)?.x).toBeCloseTo((figure(reply, 'chargeTime')?.value ?? 0) / 60, 6)
    expect(chart.band?.to).toBeCloseTo((figure(reply, 'chargeTime')?.high ?? 0) / 60, 6)
    expect((await drawPng(chart)).length).toBeGreaterThan(10_000)
  })

  it('do not go with a charge that must not be done', async () => {
    const reply = await asking.ask('time pack: 3S 720 LiHV current: 4A from: 3.7V per cell to: full')
    expect(reply.verdict).toBe('do not charge')
    expect(reply.charts).toEqual([])
  })

  it('go with a battery that is drained, with its floor and each pack', async () => {
    const reply = await asking.ask('source source: 4S 5000 Li-ion pack: 3S 720 LiHV count: 4')
    const [chart] = reply.charts
    if (chart?.kind !== 'lines') throw new Error('a battery source has a line chart')
    expect(chart.marks).toHaveLength(4)
    const lowest_V = Math.min(...(chart.series[0]?.points.map(([, volts]) => volts) ?? []))
    expect(lowest_V).toBeGreaterThanOrEqual(chart.level?.y ?? Number.POSITIVE_INFINITY)
  })

  it('do not go with a supply that keeps its volts', async () => {
    expect((await asking.ask('source source: PD 65W pack: 3S 720 LiHV')).charts).toEqual([])
  })
})
