// A PNG with a palette, decoded by a library that did not write it.

import { Resvg } from '@resvg/resvg-js'
import { describe, expect, it } from 'vitest'
import { drawPng } from '../../../src/charts/drawing/draw.ts'
import { encodePng } from '../../../src/charts/drawing/png.ts'
import { own, planSample } from './samples.ts'

/** What a reader of pictures sees in it. */
function decoded(png: Buffer, width: number, height: number): number[] {
  const href = `data:image/png;base64,${png.toString('base64')}`
  const image = `<image width="${width}" height="${height}" image-rendering="optimizeSpeed" href="${href}"/>`
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${image}</svg>`
  return [...new Resvg(svg).render().pixels]
}

describe('encodePng', () => {
  it('keeps every pixel of a picture of few colours', () => {
    const inks = [0x0072b2, 0xffffff, 0x1a1a1a, 0xe69f00, 0x009e73, 0x1b1d21]
    const [width, height] = [7, 5]
    const pixels = Array.from({ length: width * height }, (_, at) => inks[(at * at) % inks.length] as number).flatMap(
      ink => [ink >> 16, (ink >> 8) & 0xff, ink & 0xff, 255],
    )
    expect(decoded(encodePng({ width, height, pixels: Uint8Array.from(pixels) }), width, height)).toEqual(pixels)
  })

  it('keeps a picture of many colours near what it was', () => {
    const [width, height] = [64, 64]
    const pixels = Array.from({ length: width * height }, (_, at) => [
      at % 256,
      (at * 7) % 256,
      (at * 13) % 256,
      255,
    ]).flat()
    const seen = decoded(encodePng({ width, height, pixels: Uint8Array.from(pixels) }), width, height)
    expect(Math.max(...seen.map((value, at) => Math.abs(value - (pixels[at] as number))))).toBeLessThan(64)
  })
})

it('keeps a plan of forty packs within what a phone loads at once', async () => {
  const rows = Array.from({ length: 40 }, (_, at) => own(`3S 850mAh LiPo #${at + 1}`))
  const bars = rows.map((row, at) => ({
    row,
    from: at,
    to: at + 9,
    label: own('0.8 A to 4.20 V'),
    group: own('charger 1'),
  }))
  for (const theme of ['light', 'dark'] as const)
    expect((await drawPng({ ...planSample, rows, bars }, theme)).length).toBeLessThanOrEqual(60_000)
})
