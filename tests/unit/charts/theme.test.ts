import { describe, expect, it } from 'vitest'
import { colours, dashes, nth, symbols } from '../../../src/charts/drawing/theme.ts'

/** Relative luminance and contrast of two colours, WCAG 2.2. */
function contrast(a: string, b: string): number {
  const luminance = (hex: string) => {
    const [r, g, bl] = [1, 3, 5].map(at => {
      const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255
      return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4
    }) as [number, number, number]
    return 0.2126 * r + 0.7152 * g + 0.0722 * bl
  }
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number]
  return (light + 0.05) / (dark + 0.05)
}

describe.each(['light', 'dark'] as const)('the %s theme', theme => {
  const { background, text, faint, inks } = colours[theme]

  it('has text that reads well: 7 to 1 (WCAG 2.2, 1.4.6)', () => {
    expect(contrast(text, background)).toBeGreaterThan(7)
    expect(contrast(faint, background)).toBeGreaterThan(7)
  })

  it.each(inks)('has line colour %s that stands out: 3 to 1 (WCAG 2.2, 1.4.11)', ink => {
    expect(contrast(ink, background)).toBeGreaterThan(3)
  })

  it('tells lines apart without colour too', () => {
    const looks = inks.map((_, index) => `${nth(dashes, index)} ${nth(symbols, index)}`)
    expect(new Set(looks).size).toBe(inks.length)
  })
})
