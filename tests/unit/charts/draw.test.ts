import { execFileSync } from 'node:child_process'
import { Resvg } from '@resvg/resvg-js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Chart } from '../../../src/charts/chart.ts'
import { drawPng, drawSvg } from '../../../src/charts/drawing/draw.ts'
import { anyCharacter } from '../../support/any-character.ts'
import { cases } from '../../support/cases.ts'
import { chargeSample, own, planSample } from './samples.ts'

const pngSize = (png: Buffer) => ({ width: png.readUInt32BE(16), height: png.readUInt32BE(20) })

describe('drawing a chart', () => {
  it('gives a PNG twice as wide as a phone shows it', async () => {
    const png = await drawPng(chargeSample)
    expect(png.subarray(1, 4).toString()).toBe('PNG')
    expect(pngSize(png)).toEqual({ width: 800, height: 600 })
  })

  it('has no letters below 9 px where a phone shows it 320 px wide', () => {
    for (const chart of [chargeSample, planSample]) {
      const sizes = [...drawSvg(chart).matchAll(/font-size[=:]"?([\d.]+)/g)].map(([, size]) => Number(size))
      expect(sizes.length).toBeGreaterThan(0)
      expect((Math.min(...sizes) * 320) / 400).toBeGreaterThanOrEqual(9)
    }
  })

  it('grows a timeline with its rows', async () => {
    const more = { ...planSample, rows: [...planSample.rows, own('lark'), own('kestrel')] }
    const extra = pngSize(await drawPng(more)).height - pngSize(await drawPng(planSample)).height
    expect(extra).toBe(2 * 2 * 30)
  })

  it('gives the same bytes for the same chart, whatever was drawn between', async () => {
    const svg = drawSvg(chargeSample, 'dark')
    const png = await drawPng(chargeSample, 'dark')
    drawSvg(planSample)
    expect(drawSvg(chargeSample, 'dark')).toBe(svg)
    expect((await drawPng(chargeSample, 'dark')).equals(png)).toBe(true)
    expect((await drawPng(chargeSample, 'light')).equals(png)).toBe(false)
  })

  it('says in the SVG what the picture shows', () => {
    const svg = drawSvg(planSample)
    expect(svg).toContain('role="img"')
    expect(svg).toContain(`<title>${planSample.title}</title>`)
    expect(svg).toContain(`<desc>${planSample.alternative}</desc>`)
  })

  it('names the stages, the band and both axes', () => {
    const svg = drawSvg(chargeSample)
    for (const words of ['constant current', 'constant voltage', 'ends after', 'volts per cell', 'amps', 'minutes'])
      expect(svg).toContain(words)
  })

  it('draws on an opaque ground of its own, other in the dark', () => {
    const corner = (theme: 'light' | 'dark') => [
      ...new Resvg(drawSvg(chargeSample, theme)).render().pixels.subarray(0, 4),
    ]
    expect(corner('light')).toEqual([255, 255, 255, 255])
    expect(corner('dark')).toEqual([0x1b, 0x1d, 0x21, 255])
  })

  it('shows text that would be markup as text', () => {
    const nasty = own('</text><script>alert(1)</script>&"\u0000\uD800')
    const svg = drawSvg({ ...planSample, title: nasty, rows: [nasty], bars: [], alternative: nasty })
    expect(svg).not.toContain('<script')
    expect(() => new Resvg(svg)).not.toThrow()
  })

  it('draws whatever text and numbers a chart holds', async () => {
    // Thousandths: what a chart shows was measured or reckoned to no more.
    const text = fc.string({ unit: anyCharacter }).map(own)
    const number = fc.integer({ min: -1e9, max: 1e9 }).map(thousandths => thousandths / 1000)
    const chart: fc.Arbitrary<Chart> = fc.oneof(
      fc.record({
        kind: fc.constant('lines' as const),
        title: text,
        xLabel: text,
        xScale: fc.constantFrom('number' as const, 'date' as const),
        yLabels: fc.array(text, { minLength: 1, maxLength: 2 }),
        series: fc.array(fc.record({ name: text, points: fc.array(fc.tuple(number, number)) }), { maxLength: 5 }),
        marks: fc.array(fc.record({ x: number, label: text }), { maxLength: 4 }),
        band: fc.record({ from: number, to: number, label: text }),
        level: fc.record({ y: number, label: text }),
        alternative: text,
      }),
      fc.record({
        kind: fc.constant('timeline' as const),
        title: text,
        xLabel: text,
        rows: fc.constant(['wren', 'heron'].map(own)),
        bars: fc.array(
          fc.record({
            row: fc.constantFrom(own('wren'), own('heron')),
            from: number,
            to: number,
            label: text,
            group: text,
          }),
          { maxLength: 6 },
        ),
        marks: fc.array(fc.record({ x: number, label: text }), { maxLength: 2 }),
        alternative: text,
      }),
    )
    await fc.assert(
      fc.asyncProperty(chart, async sample => {
        expect((await drawPng(sample)).length).toBeGreaterThan(100)
      }),
      cases(25),
    )
  })

  it('loads what draws only when a picture is wanted', () => {
    const script = `
      import { registerHooks } from 'node:module'
      let loaded = 0
      registerHooks({ resolve(name, context, next) {
        if (/^@resvg/.test(name)) loaded++
        return next(name, context)
      } })
      const { drawPng } = await import('./src/charts/drawing/draw.ts')
      const before = loaded
      await drawPng({ kind: 'lines', title: 't', xLabel: 'x', yLabels: ['y'], series: [], alternative: 'a' })
      console.log(before, loaded > 0)`
    const output = execFileSync(process.execPath, ['--input-type=module', '-e', script], { encoding: 'utf8' })
    expect(output.trim()).toBe('0 true')
  })
})
