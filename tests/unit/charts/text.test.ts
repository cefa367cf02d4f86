import { Resvg } from '@resvg/resvg-js'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { sideBySide } from '../../../src/charts/drawing/backdrop.ts'
import { fontFile } from '../../../src/charts/drawing/draw.ts'
import { drawable, fitted, fittedName, textWidth } from '../../../src/charts/drawing/text.ts'

/** Width as the PNG renderer draws it, in DejaVu Sans. */
function drawnWidth(text: string, size_px: number, bold: boolean): number {
  const weight = bold ? 'bold' : 'normal'
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="900" height="60"><text x="5" y="40" font-family="DejaVu Sans" font-size="${size_px}" font-weight="${weight}">${text}</text></svg>`
  const fontFiles = [fontFile('DejaVuSans.ttf'), fontFile('DejaVuSans-Bold.ttf')]
  return new Resvg(svg, { font: { loadSystemFonts: false, fontFiles } }).getBBox()?.width ?? 0
}

describe('text in a picture', () => {
  it.each([
    'constant voltage',
    'Charge: 3S 720mAh LiHV, 1 A to 4.35 V',
    'ends after 37 min to 51 min',
    'resistance of a cell',
    'MAXIMUM WATTAGE',
    'illicit filling',
  ])('is measured within a fifth of what is drawn, never much too short: %s', text => {
    for (const bold of [false, true]) {
      const drawn_px = drawnWidth(text, 20, bold)
      expect(drawn_px).toBeGreaterThan(50)
      expect(textWidth(text, 20, bold) / drawn_px).toBeGreaterThan(0.95)
      expect(textWidth(text, 20, bold) / drawn_px).toBeLessThan(1.25)
    }
  })

  it('is shortened to the width it has', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.double({ min: 0, max: 200, noNaN: true }), (text, wide_px) => {
        expect(textWidth(fitted(text, wide_px, 12), 12)).toBeLessThanOrEqual(wide_px)
      }),
    )
    expect(fitted('lark spare pack', 60, 12)).toMatch(/^lark.*…$/)
    expect(fitted('lark', 60, 12)).toBe('lark')
  })

  it('keeps both ends of a name', () => {
    expect(fittedName('3S 720mAh LiHV spare #12', 100, 11)).toMatch(/^3S 7.*….*#12$/)
    expect(textWidth(fittedName('3S 720mAh LiHV spare #12', 100, 11), 11)).toBeLessThanOrEqual(100)
    expect(fittedName('wren', 100, 11)).toBe('wren')
  })

  it('loses what XML cannot hold, and nothing else', () => {
    expect(drawable(' a\u0000b\nc 4,35 Ω \uD83D\uDD0B ')).toBe('a b c 4,35 Ω \uD83D\uDD0B')
    expect(drawable('\uD800')).toBe('\uFFFD')
  })
})

describe('labels side by side', () => {
  it('are kept apart and inside the picture where all of them fit', () => {
    const labels = fc.array(fc.tuple(fc.double({ min: 50, max: 350, noNaN: true }), fc.integer({ min: 10, max: 80 })), {
      minLength: 1,
      maxLength: 4,
    })
    fc.assert(
      fc.property(labels, unsorted => {
        const sorted = unsorted.toSorted(([a], [b]) => a - b)
        const widths = sorted.map(([, wide]) => wide)
        const placed = sideBySide(
          sorted.map(([centre]) => centre),
          widths,
        )
        const ends = placed.map((centre, i) => [centre - (widths[i] ?? 0) / 2, centre + (widths[i] ?? 0) / 2] as const)
        for (const [i, [left, right]] of ends.entries()) {
          expect(left).toBeGreaterThanOrEqual(i === 0 ? 0 : (ends[i - 1]?.[1] ?? 0))
          expect(right).toBeLessThanOrEqual(400)
        }
      }),
    )
  })

  it('stay where they are when nothing is in the way', () => {
    expect(sideBySide([100, 300], [80, 80])).toEqual([100, 300])
  })
})
