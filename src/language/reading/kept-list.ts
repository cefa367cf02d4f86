// A list of packs in notation, as it is kept from the question before.

import { type PackTold, toldIn } from './told/told-pack.ts'

/** Packs of the question before, where they were all alike. */
export interface KeptPacks {
  readonly pack: PackTold
  readonly count?: number
  /** Where they all stood, in notation. */
  readonly level?: string | undefined
  /** What each was to be charged with. */
  readonly current?: string | undefined
}

/** A list in notation by its entries; `text` is one of them without its count. */
export const keptEntries = (text: string) =>
  text.split('; ').map(entry => {
    const [, count = '1', one = ''] = /^(?:(\d+)x )?(.*)$/.exec(entry) ?? []
    const [, pack = '', current, level] = /^(.*?)(?: at ([\d.]+A))?(?: at (\d.*V.*|\d.*%))?$/.exec(one) ?? []
    return { count: Number(count), text: one, pack, level, current }
  })

/** What is kept as a list holds where neither its number nor its levels are told anew. */
export function keptList(text: string): KeptPacks | undefined {
  const entries = keptEntries(text)
  const [first] = entries
  const pack = first && toldIn(first.pack)
  if (!pack || entries.some(one => one.pack !== first.pack)) return undefined
  const isLevel = entries.every(({ level }) => level === first.level)
  return {
    pack,
    count: entries.reduce((sum, { count }) => sum + count, 0),
    level: isLevel ? first.level : undefined,
    current: entries.every(({ current }) => current === first.current) ? first.current : undefined,
  }
}
