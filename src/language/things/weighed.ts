// A pack with what it weighs behind it: `3S 720 LiHV 45g`; and a bag of them: `4x 3S 720 LiHV 45g; 4S 1500 LiPo 178g`.

import type { Pack } from '../../charging/things/pack.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { kindsOfPack, moreKindsThan } from '../parts/pack.words.ts'
import { type Counted, readList, writeList } from '../quantities/list.ts'
import { readMass, writeMass } from '../quantities/quantities.ts'
import type { Read } from '../scan/read.ts'
import { readPack, writePack } from './pack.ts'

export interface WeighedPack {
  readonly pack: Pack
  readonly mass_kg?: number
}

export type Bag = readonly Counted<WeighedPack>[]

export const bagRules = { listed: 'packs' as const, most: 100, example: '4x 3S 720 LiHV 45g; 4S 1500 LiPo 178g' }
const mostKinds = 12

/** How people set packs against each other; ";" says the same. */
const between = / ?[|+] ?| (?:vs\.?|versus|and|or|against) /giu
const trailingMass = /[ ,]((?:\d+(?:[.,]\d+)?|[.,]\d+) ?(?:g|grams?|kg|oz|ounces?|lbs?|pounds?))$/iu

/** Reads up to 12 kinds of pack. Throws a Problem that names the token that is not understood. */
export function readBag(text: string): Read<Bag> {
  const bag = readList(plainText(text).replace(between, '; '), bagRules, readWeighedPack)
  if (bag.value.length <= mostKinds) return bag
  throw problemAt(text, moreKindsThan(mostKinds), { expected: kindsOfPack(mostKinds), example: bagRules.example })
}

function readWeighedPack(text: string): Read<WeighedPack> {
  const weighed = trailingMass.exec(text)
  const { value: pack, assumed } = readPack(weighed ? text.slice(0, weighed.index) : text)
  return { value: { pack, mass_kg: weighed ? readMass(weighed[1] ?? '') : undefined }, assumed }
}

/** Canonical text; reading it gives the same bag. */
export const writeBag = (bag: Bag): string =>
  writeList(bag, ({ pack, mass_kg }) =>
    mass_kg === undefined ? writePack(pack) : `${writePack(pack)} ${writeMass(mass_kg)}`,
  )
