// A bag: several packs, each with how many there are and what one weighs: `4x 3S 720 LiHV 45g; 4S 1500 LiPo 178g`.

import { Problem } from '../assistant/problem.ts'
import type { Pack } from '../charging/pack.ts'
import { readPack, writePack } from './pack.ts'
import { readCount, readMass, writeMass } from './quantities.ts'
import type { Read } from './read.ts'
import { plainText, quoted } from './text.ts'

export interface BagItem {
  readonly pack: Pack
  readonly count: number
  /** Of one pack. */
  readonly mass_kg?: number
}

export const mostItems = 12

const separator = / ?[;|+] ?| (?:vs\.?|versus|and|or|against) /iu
const leadingCount = /^(\d{1,3}) ?x ?(?=\d)/iu
const trailingMass = /[ ,]((?:\d+(?:[.,]\d+)?|[.,]\d+) ?(?:g|grams?|kg|oz|ounces?|lbs?|pounds?))$/iu

/** Reads 1 to 12 kinds of pack. Throws a Problem that names the token that is not understood. */
export function readBag(text: string): Read<readonly BagItem[]> {
  const plain = plainText(text)
  const parts = plain.split(separator).filter(part => part !== '')
  if (parts.length === 0 || parts.length > mostItems) {
    throw new Problem({
      what: parts.length === 0 ? 'I see no pack there.' : `That is more than ${mostItems} kinds of pack.`,
      ...quoted(plain),
      expected: `1 to ${mostItems} kinds of pack with ";" between them`,
      example: '4x 3S 720 LiHV 45g; 4S 1500 LiPo 178g',
    })
  }
  const items = parts.map(readItem)
  return { value: items.map(({ value }) => value), assumed: items.flatMap(({ assumed }) => assumed) }
}

function readItem(text: string): Read<BagItem> {
  const counted = leadingCount.exec(text)
  const rest = counted ? text.slice(counted[0].length) : text
  const weighed = trailingMass.exec(rest)
  const { value: pack, assumed } = readPack(weighed ? rest.slice(0, weighed.index) : rest)
  return {
    value: {
      pack,
      count: counted ? readCount(counted[1] ?? '') : 1,
      ...(weighed ? { mass_kg: readMass(weighed[1] ?? '') } : {}),
    },
    assumed,
  }
}

/** Canonical text; reading it gives the same bag. */
export function writeBag(items: readonly BagItem[]): string {
  return items
    .map(({ pack, count, mass_kg }) =>
      [count > 1 ? `${count}x` : '', writePack(pack), mass_kg === undefined ? '' : writeMass(mass_kg)]
        .filter(Boolean)
        .join(' '),
    )
    .join('; ')
}
