// "99S 720 LiHV", "3S -2200 mAh": what no pack is. Said as in notation, for read on it would be taken for something else.

import { Problem } from '../../ground/problem.ts'
import { readCapacity } from '../quantities/quantities.ts'
import { readPack } from '../things/pack.ts'

interface Impossible {
  readonly stands: RegExp
  readonly read: (typed: string) => unknown
  readonly mended: (typed: string) => string
}

const minus = /^(?:[-\u2212]|minus )/i

const impossible: readonly Impossible[] = [
  // A count that is no pack's, with the capacity behind it; so many seconds have none.
  {
    stands:
      /(?<![\p{L}\d.,])(?:0|1[5-9]|[2-9]\d|[1-9]\d\d)(?=s(?: ?\d+p)?[ ,]+(?:\d{3,5}(?! ?m?V\b)|\d{1,2}[.,]\d+ ?ah)\b)/iu,
    read: count => readPack(`${count}S 1000mAh LiPo`),
    mended: () => '3',
  },
  // Less than nothing: a sign of its own before a capacity.
  {
    stands: /(?<=^|[\s(])(?:[-\u2212]|minus )(?:\d[\d.,]* ?m?ah|(?<=\d ?s(?:lipo| )*[-\u2212])\d{3,5})\b/iu,
    read: typed => readCapacity(`-${typed.replace(minus, '').replace(/\d$/, '$&mAh')}`),
    mended: typed => typed.replace(minus, ''),
  },
]

/** Throws a Problem that offers the same question with what can be. */
export function refuseImpossible(text: string): void {
  for (const { stands, read, mended } of impossible) {
    const [typed] = stands.exec(text) ?? []
    if (typed === undefined) continue
    try {
      read(typed)
    } catch (error) {
      if (!(error instanceof Problem)) throw error
      const question = text.replace(stands, mended)
      throw error.offering([{ label: question, question }])
    }
  }
}
