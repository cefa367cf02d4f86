// Currents that no pack of the told capacity bears, and more put in than it holds.

import type { Word } from '../engine/words.ts'
import { before, isWhole, type Relation, type Told, textOf } from './relation.ts'
import { capacityIn, countIn, type Value } from './values.ts'

/** A charge faster than this, in C, is told as too fast; below it the envelope judges. */
const fastest_C = 6

/** Amps over the told capacity, or a rate that is meant for charging. */
export const tooFast: Relation = told => {
  const capacity = capacityIn(told.values)
  const set = told.values.find(
    one =>
      one.kind === 'amps' && capacity !== undefined && one.value / (capacity / 1000) > fastest_C && isMeant(told, one),
  )
  const rate = told.values.find(
    one =>
      one.kind === 'rate' && one.value >= 6 && one.value <= 200 && before(told, one.from, 'chargeAt', 4) !== undefined,
  )
  // "What does 35C on a label mean": nobody charges at it.
  if (told.marked.words.some(({ w }) => meanings.test(w))) return undefined
  const found = rate ?? (told.has('board') || told.has('manyPacks') ? undefined : set)
  if (found === undefined || told.has('drawing') || isCorrected(told, found)) return undefined
  return { danger: 'tooFast', from: found.from, to: found.to }
}

/** "Full in ten minutes": sooner than any pack takes it, and no clock that shows what is left. */
export const tooSoon: Relation = told => {
  const { words } = told.marked
  const isWithin = (at: number) => /^(?:in|within|under)$/.test(words[at]?.w ?? '')
  const soon = told.values.find(
    ({ kind, value, from }) =>
      kind === 'minutes' && value < soonest_min && (isWithin(from - 1) || isWithin(from - 2)) && asksFull(told, from),
  )
  if (!soon || capacityIn(told.values) === undefined || words.some(({ w }) => remains.test(w))) return undefined
  return { danger: 'tooFast', from: soon.from, to: soon.to }
}
/** At `fastest_C` a pack would need so long, in min. */
const soonest_min = 60 / fastest_C + 1
const remains = /^(?:says?|shows?|left|remain\w*|ago|display|countdown)$/
const becomesFull = /^(?:charg\w*|full|fill\w*|ready|done|topp?\w*|juice\w*)$/

const asksFull = ({ marked: { words } }: Told, from: number): boolean =>
  words.slice(Math.max(0, from - 9), from).some(({ w }) => becomesFull.test(w))

const meanings = /^(?:mean|means|meaning|difference|between|versus|vs)$/

/** Whether amps are to be set, not what a charger or a supply can give. */
function isMeant(told: Told, one: Value): boolean {
  const inList = told.values.some(({ kind, to }) => kind === 'bare' && to === one.from)
  if (one.value >= 200 || inList || isSupplied(told, one) || told.is(one.to, 'sourceWord')) return false
  if (before(told, one.from, 'givesNoMore', 5) !== undefined) return false
  return before(told, one.from, 'sourceWord', 4) === undefined && before(told, one.from, 'setAt', 3) !== undefined
}

/** Amps told beside the volts of a supply ("12V 5A"). */
const isSupplied = ({ values }: Told, one: Value): boolean =>
  values.some(
    ({ kind, to, from }) => kind === 'volts' && Math.min(Math.abs(one.from - to), Math.abs(from - one.to)) <= 1,
  )

const isCorrected = (told: Told, { to }: Value): boolean =>
  told.has('forFlying') ||
  (told.marked.words[to]?.w === 'but' &&
    told.has('chargeAt') &&
    told.values.some(({ kind, value, from }) => kind === 'rate' && value <= 2 && from > to))

/** In C: packs are labelled for as much, and the envelope judges whether these are. */
const usual_C = 5

/** Whether rates are told, or amps for the told capacity, and none is above the usual ones. */
export function isUsualRate({ values }: Told): boolean {
  const capacity_Ah = (capacityIn(values) ?? 0) / 1000
  const rates = values.flatMap(({ kind, value }) => (kind === 'rate' ? [value] : []))
  const most_C = rates.length > 0 ? Math.max(...rates) : plain_C
  const amps = values.flatMap(({ kind, value }) => (kind === 'amps' ? [value] : []))
  return rates.length + amps.length > 0 && most_C <= usual_C && amps.every(amps => amps <= most_C * capacity_Ah)
}
/** In C: nobody is told off for amps of so many, whatever the words; the envelope judges them. */
const plain_C = 2

const changing =
  /^(?:replac|swap|chang|bigger|larger|stronger|fatter|foil|silver|bridg|nail|wire|bypass|instead|upgrad|put|was|were|blow|blew)/

/** "A 10 A fuse": what it holds is told, and nobody meddles with it. */
export function isRatedFuse({ marked: { words }, values }: Told): boolean {
  const amps = values.filter(({ kind }) => kind === 'amps')
  const isFuse = (at: number) => /^fused?$/.test(words[at]?.w ?? '')
  return amps.some(({ from, to }) => isFuse(to) || isFuse(from - 1)) && !words.some(({ w }) => changing.test(w))
}

/** What was put in, and its share of what the label says. */
function goneIn(told: Told): { readonly given: Value; readonly share: number } | undefined {
  const amounts = told.values.filter(({ kind, value }) => (kind === 'bare' || kind === 'mAh') && value >= 100)
  // "4S 2200": a label.
  const isLabel = (one: Value) => told.values.some(({ kind, to }) => kind === 'count' && to === one.from)
  const given = amounts.find(
    one => !isLabel(one) && (before(told, one.from, 'putIn', 3) !== undefined || told.is(one.to, 'goneIn')),
  )
  const others = amounts.filter(one => one !== given)
  const label = others.find(one => one.kind === 'mAh') ?? others[0]
  if (given === undefined || label === undefined || told.has('severalPacks')) return undefined
  return { given, share: given.value / label.value }
}

/** More put in than the label says, and it goes on, or far more. */
export const overfull: Relation = told => {
  const found = goneIn(told)
  if (found === undefined || found.share >= 3) return undefined
  const isTooMuch = found.share > 1.25 || (found.share > 1.07 && told.has('goesOn'))
  return isTooMuch ? { danger: 'overfull', from: found.given.from, to: found.given.to } : undefined
}

/** Whether clearly more went in than the label says, though it may have ended. */
export function tookMore(told: Told): boolean {
  const { share = 0 } = goneIn(told) ?? {}
  return share > 1.12 && share < 3
}

/** Whether no more was put in than the label says: it goes on as it should. */
export const isWithinLabel = (told: Told): boolean => (goneIn(told)?.share ?? 2) <= 1

/** More volts per cell than plain cells take. */
export const tooHigh: Relation = told => {
  const high = told.has('meters') ? undefined : highIn(told)
  return high === undefined ? undefined : { danger: 'overfull', from: high.from, to: high.to }
}

/** "It reads 17.3 on my meter, which of them lies": too much, where the meter is right. */
export const mayBeHigh = (told: Told): boolean => told.has('meters') && highIn(told) !== undefined

function highIn(told: Told): Value | undefined {
  if (told.values.some(({ chemistry }) => chemistry === 'lihv')) return undefined
  const count = countIn(told.values)
  return told.values.find(one => isTooHigh(told, one) || isPackTooHigh(told, one, count))
}

/** Volts of a whole pack that are more than its cells may have. */
function isPackTooHigh(told: Told, one: Value, count: number | undefined): boolean {
  const { kind, value, from } = one
  if (count === undefined || count < 2 || (kind !== 'volts' && kind !== 'bare') || isWhole(told, one)) return false
  if (told.values.some(({ chemistry }) => chemistry === 'lead') || before(told, from, 'otherVolts', 8) !== undefined)
    return false
  return value / count > 4.225 && value / count < 4.6 && before(told, from, 'reads', 4) !== undefined
}

function isTooHigh(told: Told, { kind, value, from, to }: Value): boolean {
  if (kind !== 'volts' && kind !== 'bare') return false
  // Beyond what any cell is charged to.
  if (told.is(to, 'perCell') && value > 4.4 && value < 8) return true
  if (value >= 4.195 && value < 4.34 && before(told, from, 'beyond', 1) !== undefined) return true
  if (value <= 4.215 || value >= 4.34) return false
  return told.is(to, 'perCell') || told.has('plainOrPunch') || before(told, from, 'reads', 3) !== undefined
}

/** In A: what no charger puts in, and motors draw. */
const leastDrawn_A = 30

const isGiving = ({ w }: Word): boolean => /^(?:put|puts|push|pump|give|gives|shove)$/.test(w)

/** Whether it is spoken of flying, not of charging: what is joined and gets hot there is another matter. */
export const isInFlight = ({ values, has, marked: { words } }: Told): boolean =>
  !has('charging') &&
  !values.some(({ kind, from }) => kind === 'amps' && words.slice(Math.max(0, from - 2), from).some(isGiving)) &&
  (words.some(({ w }) => /^(?:fly|flies|flying|flight|throttle|hover|average)/.test(w)) ||
    values.some(({ kind, value }) => kind === 'amps' && value >= leastDrawn_A))

const journey =
  /\b(?:on|by|in|aboard|onto) (?:a |an |the |my )?(?:plane|aeroplane|airplane|cabin|train|ferry|bus)\b|\b(?:luggage|baggage|airport|airline|suitcase|customs)\b/
const charged = /^(?:charg\w*|recharg\w*|fill\w*|full|top\w*|amps?|plug\w*|sockets?|usb|power\w*|running|runs)$/

const carried = /^(?:take|takes|taking|took|bring|carry|carrying|pack|allowed|bag|luggage|baggage|suitcase|limit)$/

/** "Can I take 6 x 4S 1500 on a plane": spoken of a journey, and nothing is charged. */
export const isJourney = ({ marked: { words }, values }: Told): boolean =>
  journey.test(textOf(words)) &&
  words.some(({ w }) => carried.test(w)) &&
  !values.some(({ kind }) => kind === 'amps' || kind === 'rate') &&
  !words.some(({ w }) => charged.test(w))
