// Of several temperatures told the pack's own, now: "-4 outside, but the pack is at 21 °C", "40 yesterday, 24 today".

import { wordSet } from '../../../ground/word-set.ts'
import type { Found, Sentence } from '../sentence/sentence.ts'

const packs = wordSet('pack packs battery batteries lipo lipos cell cells akku akkus accu accus they')
const air = wordSet('air ambient weather outside outdoors forecast')
const indoors = wordSet('indoors inside room house kitchen home living')
const otherTimes = wordSet('yesterday tomorrow forecast last was had will later before earlier ago')
type Is = (one: Found) => boolean
const parting = /^[,.;:!?]$|^(?:but|and|while|though|although|yet)$/
const reach = 9
/** Less sure it may be any number, and what is surely told counts. */
const leastSure = 0.7

/** What is told of the air or of another day is a number like any, where the pack's own warmth is told too. */
export function ownWarmth(sentence: Sentence, found: readonly Found[]): readonly Found[] {
  const any = found.filter(({ kind }) => kind === 'temperature')
  const sure = any.filter(({ score }) => score >= leastSure)
  // Of two that surely are temperatures one is the pack's, whatever else may be one.
  const told = sure.length > 1 ? sure : any
  if (new Set(told.map(({ after }) => after)).size < 2) return found
  const inPack = new Set(
    found.flatMap(({ kind, first, after, score }) =>
      kind === 'pack' && score > 0.5 ? Array.from({ length: after - first }, (_, at) => first + at) : [],
    ),
  )
  const isOfPack = (one: Found) =>
    nearest(sentence, one, at =>
      inPack.has(at) || packs.has(sentence.word(at)) ? true : about(sentence, at) ? false : undefined,
    )
  const isNow = (one: Found) =>
    nearest(sentence, one, at => (otherTimes.has(sentence.word(at)) ? false : undefined)) ?? true
  const [isInside, isOutside] = [indoors, air].map(
    words => (one: Found) => nearest(sentence, one, at => words.has(sentence.word(at)) || undefined) === true,
  ) as [Is, Is]
  const now = told.filter(isNow)
  const own =
    [
      now.filter(isOfPack),
      told.filter(isOfPack),
      now.filter(one => isInside(one) && !isOutside(one)),
      now.filter(one => !isOutside(one)),
      now,
    ].find(some => some.length > 0) ?? told
  if (!own.some(({ score }) => score >= leastSure)) return found
  return found.flatMap(one => {
    if (!told.includes(one) || own.includes(one)) return [one]
    return one.score >= leastSure ? [{ ...one, kind: 'number', text: '', score: 0.9 }] : []
  })
}

const about = (sentence: Sentence, at: number): boolean =>
  air.has(sentence.word(at)) || otherTimes.has(sentence.word(at))

/** What the nearest word that says something says, of the same part of the sentence. */
function nearest(
  sentence: Sentence,
  { first, after }: Found,
  says: (at: number) => boolean | undefined,
): boolean | undefined {
  const open = { before: true, behind: true }
  for (let away = 1; away <= reach; away += 1) {
    for (const [side, at] of [
      ['before', first - away],
      ['behind', after - 1 + away],
    ] as const) {
      open[side] &&= sentence.tokens[at] !== undefined && !parting.test(sentence.word(at))
      const said = open[side] ? says(at) : undefined
      if (said !== undefined) return said
    }
  }
  return undefined
}
