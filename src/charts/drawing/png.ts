// A picture of few colours as a PNG with a palette, a third of the bytes of one without: https://www.w3.org/TR/png-3/

import { crc32, deflateSync } from 'node:zlib'

/** Opaque pixels, four bytes each. */
export interface Pixels {
  readonly width: number
  readonly height: number
  readonly pixels: Uint8Array
}

const mostColours = 256
const signature = Buffer.from('89504e470d0a1a0a', 'hex')
/** Behind width and height: eight bits a pixel, by palette, and all else as usual. */
const kind = [8, 3, 0, 0, 0]

export function encodePng({ width, height, pixels }: Pixels): Buffer {
  const colours = new Uint32Array(width * height)
  for (let at = 0; at < colours.length; at++) colours[at] = colourAt(pixels, at * 4)
  const { palette, places } = paletteOf(colours)
  // Each row begins with its filter, which is none.
  const rows = Buffer.alloc(height * (width + 1))
  for (let at = 0; at < colours.length; at++)
    rows[at + Math.floor(at / width) + 1] = places.get(colours[at] as number) as number
  return Buffer.concat([
    signature,
    chunk('IHDR', Buffer.concat([fourBytes(width), fourBytes(height), Buffer.from(kind)])),
    chunk('PLTE', Buffer.from(palette.flatMap(colour => [colour >> 16, (colour >> 8) & 0xff, colour & 0xff]))),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ])
}

const colourAt = (pixels: Uint8Array, at: number): number =>
  ((pixels[at] as number) << 16) | ((pixels[at + 1] as number) << 8) | (pixels[at + 2] as number)

/** The commonest colours stay as they are; a rare one becomes the commonest of those that share its upper bits. */
function paletteOf(colours: Uint32Array) {
  const counts = new Map<number, number>()
  for (const colour of colours) counts.set(colour, (counts.get(colour) ?? 0) + 1)
  const rarestFirst = [...counts].toSorted(([, a], [, b]) => a - b).map(([colour]) => colour)
  for (let bits = 4; ; bits -= 1) {
    const share = (colour: number) =>
      [16, 8, 0].reduce((all, shift) => (all << bits) | (((colour >> shift) & 0xff) >> (8 - bits)), 0)
    const commonest = new Map(rarestFirst.map(colour => [share(colour), colour]))
    const palette = [...commonest.values()]
    if (palette.length > mostColours) continue
    const at = new Map(palette.map((colour, index) => [colour, index]))
    const places = rarestFirst.map(
      colour => [colour, at.get(commonest.get(share(colour)) as number) as number] as const,
    )
    return { palette, places: new Map(places) }
  }
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name), data])
  return Buffer.concat([fourBytes(data.length), body, fourBytes(crc32(body))])
}

function fourBytes(value: number): Buffer {
  const bytes = Buffer.alloc(4)
  bytes.writeUInt32BE(value)
  return bytes
}
