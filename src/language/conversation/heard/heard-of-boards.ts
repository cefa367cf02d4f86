// What is heard of a board in a conversation: whether what joins it differs from what was spoken of.

import type { Danger } from '../../../charging/situation/dangers.ts'
import { mostApart_V } from '../../../charging/things/practice.ts'
import { bestCover, candidatesOf } from '../../candidates/index.ts'
import { type DangersIn, dangersIn } from '../../dangers/index.ts'
import type { Talk } from '../../frames/frame.ts'
import { highestCell_V } from '../../parts/level-words.ts'
import { keptEntries } from '../../reading/kept-list.ts'
import { toldBy, toldIn } from '../../reading/told/told-pack.ts'

const joins =
  /\b(?:with|to|beside|among) (?:them|it|these|those|the others?)\b|\b(?:add|adding|plus|along|as well|too)\b|\bon (?:it|the board)\b/i

/** The packs of the board that was asked about. */
function boardIn(frame: Talk['frame']) {
  const { packs } = frame?.question.command === 'parallel' ? frame.question.options : {}
  return packs === undefined ? [] : keptEntries(packs)
}

/** "Both at the same time on one port": what was spoken of and what is named now. */
const sharesOne =
  /\b(?:both|together|them|all)\b.*\b(?:one|the same|a single) (?:port|output|outlet|board|lead|channel)\b|\bboth (?:in parallel|on (?:a|the|my) board)\b/i

/** "And a 4S LiHV with them": a pack that differs joins the board, or the pack, that was asked about. */
export function onBoard(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const [first] = boardIn(frame)
  const isJoined = first ? joins.test(text) || ofOne.test(text) : sharesOne.test(text)
  const before = toldIn(first?.pack ?? frame?.question.options.pack ?? '')
  if (!before || !isJoined) return heard
  const differs = bestCover(candidatesOf(text)).some(value => {
    const { series = before.series, chemistry = before.chemistry } = toldBy(value) ?? {}
    return series !== before.series || chemistry !== before.chemistry
  })
  return differs ? withTold(heard, 'boardMixed', text) : heard
}

/** Where they all stand now, wherever they stood. */
export const ofAll = /\b(?:all|both|each|every)\b/i

/** "One's 3S", "one 22.1, the rest 25": what lies apart from the others of the board that was asked about. */
export function amongOthers(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const [first] = boardIn(frame)
  if (!first || !ofOne.test(text) || ofAll.test(text)) return heard
  const { series = 1 } = toldIn(first.pack) ?? {}
  const cells_V = [...text.matchAll(plainNumber)]
    .map(([typed]) => Number(typed.replace(',', '.')))
    .map(volts => (volts > highestCell_V ? volts / series : volts))
    .filter(volts => volts > lowestCell_V && volts < highestCell_V)
  const isFar = Math.max(...cells_V) - Math.min(...cells_V) >= mostApart_V.value - 0.005
  return isFar ? withTold(heard, 'boardMixed', text) : heard
}
const plainNumber = /(?<![\d.,])\d+(?:[.,]\d+)?(?![.,]?\d| ?(?:m?ah?|s|%|c|min|h|x|°)(?!\p{L}))/giu
const lowestCell_V = 2.5

const ofOne =
  /\b(?:one|the (?:new|old|other|last|first|second|third|fourth|small|big|red|blue)(?: (?:one|pack))?|another|(?:the )?(?:others|rest)|his|hers|mine)\b/i

/** "And the new one at 4.0": it stands apart from those that were told to stand alike. */
export function oneApart(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const entries = boardIn(frame)
  const [first, ...others] = entries.filter(({ level }) => level !== undefined)
  const count = entries.reduce((sum, one) => sum + one.count, 0)
  const { series = 1 } = toldIn(first?.pack ?? '') ?? {}
  const perCell_V = (level: string) => Number.parseFloat(level) / (level.endsWith('pack') ? series : 1)
  const isAlike = first !== undefined && count > 1 && others.every(({ level }) => level === first.level)
  if (!isAlike || !first.level?.includes('V') || !ofOne.test(text)) return heard
  const before_V = perCell_V(first.level)
  const isFar = bestCover(candidatesOf(text)).some(
    ({ kind, text: level }) =>
      kind === 'state' && level.includes('V') && Math.abs(perCell_V(level) - before_V) >= mostApart_V.value - 0.005,
  )
  return isFar ? withTold(heard, 'boardMixed', text) : heard
}

const ofThose = /\b(?:more )?of (?:them|these|those|the same)\b|\bmore\b/i
/** What says no more than that it goes on. */
const opening = /^\W*(?:(?:and|so|but|ok|if|what|how about|about|now|then|it'?s|its|they'?re|i have|we have)\b\W*)+/i
const apart = /\b(?:other|another|differ\w*|mix\w*|full|empty|flat|old\w*|new\w*|used)\b/i

/** "Two of those in parallel", "and two more": as many of the one pack that was spoken of, and none beside them. */
export function alikeOnBoard(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const { pack = boardIn(frame)[0]?.pack } = frame?.question.options ?? {}
  const isAlike = bestCover(candidatesOf(text)).every(({ kind }) => kind === 'count' || kind === 'board')
  if (pack === undefined || !ofThose.test(text) || apart.test(text) || !isAlike) return heard
  const named = dangersIn(text.replace(opening, '').replace(ofThose, pack))
  if (named.told.some(({ danger }) => danger === 'boardMixed')) return heard
  const may = named.suspected.filter(danger => danger === 'boardMixed')
  const others = without(heard, 'boardMixed')
  return { ...others, suspected: [...others.suspected, ...may] }
}

/** "Both at once?" behind a question about packs speaks of them, and of no wires. */
export function bothPacks(heard: DangersIn, text: string, { frame }: Talk): DangersIn {
  const isOfPack = frame?.question.options.pack !== undefined && /\bboth\b/i.test(text)
  const named = isOfPack ? dangersIn(text.replace(/\bboth\b/i, 'the packs')) : heard
  const still = new Set([...named.told.map(({ danger }) => danger), ...named.suspected])
  return { ...heard, told: heard.told.filter(({ danger }) => danger !== 'homework' || still.has(danger)) }
}

/** The whole text tells it. */
export const withTold = (heard: DangersIn, danger: Danger, typed: string): DangersIn => ({
  ...heard,
  told: [...without(heard, danger).told, { danger, typed, start: 0, end: typed.length }],
})

export const without = (heard: DangersIn, danger: Danger): DangersIn => ({
  told: heard.told.filter(one => one.danger !== danger),
  suspected: heard.suspected.filter(one => one !== danger),
})
