// Levels dealt to the packs that they are told of: "two 3S, one at 3.72 and one at 3.75", "six, all between 3.6 and 3.7".

import type { Holders } from '../candidates/sentence/candidate.ts'

export interface ToldLevel {
  /** In notation. */
  readonly text: string
  readonly holders: Holders | undefined
}

export interface ToldPacks {
  /** In notation. */
  readonly pack: string
  /** Undefined where nobody said how many. */
  readonly count: number | undefined
  /** Told behind it, before the next. */
  readonly levels: readonly ToldLevel[]
}

/** So many packs alike at one level; without one nobody told where they stand. */
export interface Dealt {
  readonly pack: string
  readonly count: number
  readonly level: string | undefined
}

/** Where each pack stands. Levels that stand behind the last alone are those of all, where they are several or say so. */
export function deal(told: readonly ToldPacks[]): readonly Dealt[] {
  const { levels = [] } = told.at(-1) ?? {}
  const isShared =
    told.slice(0, -1).every(one => one.levels.length === 0) &&
    (levels.length > 1 || levels.some(({ holders }) => holders === 'all'))
  if (!isShared || told.length === 1) return alike(told.flatMap(dealOne))
  if (levels.length === told.length)
    return alike(told.flatMap((one, at) => dealOne({ ...one, levels: levels.slice(at, at + 1) })))
  const packs = told.flatMap(({ pack, count = 1 }) => Array<string>(count).fill(pack))
  const spread = spreadOver(levels, packs.length)
  return alike(packs.map((pack, at) => ({ pack, count: 1, level: spread[at] })))
}

/** As many levels as were told say how many packs there are, where nobody did. */
function dealOne({ pack, count, levels: told }: ToldPacks): readonly Dealt[] {
  const levels = withoutWords(told, count)
  const packs = count ?? Math.max(1, levels.length > 1 ? holdersOf(levels) : 1)
  return spreadOver(levels, packs).map(level => ({ pack, count: 1, level }))
}

/** "All flown, both at 11.4", "two landed, 3.74 and 3.76": the volts say where those stand that the word is said of. */
function withoutWords(levels: readonly ToldLevel[], count: number | undefined): readonly ToldLevel[] {
  const figures = levels.filter(({ text }) => /\d/.test(text))
  const isOfThose = (holders: ToldLevel['holders']) => figures.length > 1 && holders === figures.length
  const isOfAll = figures.some(({ holders }) => holders === 'all') || isOfThose(count)
  return levels.filter(
    ({ text, holders }) => text !== 'empty' || !(typeof holders === 'number' ? isOfThose(holders) : isOfAll),
  )
}

const holdersOf = (levels: readonly ToldLevel[]): number =>
  levels.reduce((sum, { holders }) => sum + (typeof holders === 'number' ? holders : 1), 0)

/**
 * The level of each of so many packs. Of several levels each stands for one pack or as many as were told, the highest
 * of those that do not say for all others: so they stand as far apart as they can.
 */
function spreadOver(told: readonly ToldLevel[], packs: number): readonly (string | undefined)[] {
  // "Two packs at 3.82 and 3.90": the count is that of all, and not of those at the first.
  const levels =
    holdersOf(told) > packs && told.length <= packs ? told.map(({ text }) => ({ text, holders: undefined })) : told
  const isOpen = ({ holders }: ToldLevel) => typeof holders !== 'number'
  const open = levels.filter(isOpen)
  const highest = open.reduce<ToldLevel | undefined>((a, b) => (a && size(a) >= size(b) ? a : b), undefined)
  const counts = levels.map(level =>
    level === highest
      ? 1 + Math.max(0, packs - holdersOf(levels))
      : typeof level.holders === 'number'
        ? level.holders
        : 1,
  )
  const spread = levels.flatMap(({ text }, at) => Array<string>(counts[at] ?? 1).fill(text))
  return Array.from({ length: packs }, (_, at) => spread[at])
}

const size = ({ text }: ToldLevel): number => Number.parseFloat(text) || 0

/** Neighbours that are alike, counted. */
function alike(dealt: readonly Dealt[]): readonly Dealt[] {
  const all: Dealt[] = []
  for (const next of dealt) {
    const before = all.at(-1)
    const isSame = before?.pack === next.pack && before.level === next.level
    if (isSame) all.pop()
    all.push(isSame ? { ...next, count: before.count + next.count } : next)
  }
  return all
}
