// "99S 720 LiHV": cells that no pack here has. Said as in notation, for read on they would be taken for something else.

import { Problem } from '../../ground/problem.ts'
import { readPack } from '../things/pack.ts'

/** A count that is no pack's, with the capacity behind it; so many seconds have none. */
const beyond =
  /(?<![\p{L}\d.,])(0|1[5-9]|[2-9]\d|[1-9]\d\d)s(?: ?\d+p)?[ ,]+(?:\d{3,5}(?! ?m?V\b)|\d{1,2}[.,]\d+ ?ah)\b/iu

/** Throws a Problem that offers the same question with cells that can be. */
export function refuseCellsBeyond(text: string): void {
  const count = beyond.exec(text)?.[1]
  if (count === undefined) return
  try {
    readPack(`${count}S 1000mAh LiPo`)
  } catch (error) {
    if (!(error instanceof Problem)) throw error
    const mended = text.replace(new RegExp(`(?<![\\d.,])${count}(?=s)`, 'i'), '3')
    throw error.offering([{ label: mended, question: mended }])
  }
}
