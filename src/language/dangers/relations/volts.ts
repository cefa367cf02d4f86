// Volts that are too low for a cell, too high, or apart on one board.

import { mostApart_V } from '../../../charging/things/practice.ts'
import { isSaidSame, isSaidWithin, states } from './one-kind.ts'
import { before, crossesClause, isWhole, type Judged, type Relation, type Told, textOf, wasOnce } from './relation.ts'
import { chemistryIn, countIn, type Value } from './values.ts'

/** Below these volts per cell a pack counts as run down; nickel and lead are left to the core. */
const lowest = { lipo: 2.8, lihv: 2.8, liion: 2.4, life: 1.9, nickel: 0.7, lead: 0 } as const
/** Further apart no two are told to lie. */
const most_V = 2

/** A reading of a cell, or of a pack whose count is told, that lies below what its chemistry bears. */
export const tooLow: Relation = told => {
  const chemistry = chemistryIn(told.values) ?? 'lipo'
  const count = countIn(told.values)
  for (const value of told.values) {
    if (value.kind !== 'volts' && value.kind !== 'bare') continue
    const perCell = cellVolts(told, value, count)
    if (wasOnce(told, value.from) || told.has('gone') || isApart(told, value) || isOfBank(told, value)) continue
    if (perCell === undefined || perCell >= lowest[chemistry] || isSpread(perCell, 0.05)) continue
    return { danger: 'tooLow', from: value.from, to: value.to }
  }
  return undefined
}

/** "0.3 V apart", "they differ by 0.3": between readings, and none itself. */
const isApart = (told: Told, { value, from, to }: Value): boolean =>
  value < most_V && (told.is(to, 'apart') || before(told, from, 'apart', 6) !== undefined || isLost(told, from))

/** "12000 mAh at 5 V": what is stored is told at them. */
const isOfBank = ({ marked: { words } }: Told, { from, value }: Value): boolean =>
  value === 5 && words[from - 1]?.w === 'at' && /^(?:m?ah|wh)$/.test(words[from - 2]?.w ?? '')

/** "Drop at most 0.5 V": what a lead takes. */
function isLost({ marked: { words } }: Told, from: number): boolean {
  let at = from - 1
  while (lostBy.test(words[at]?.w ?? '') && words[at]?.cut === 0) at -= 1
  return /^(?:drop|drops|lose|loses|losing|loss)$/.test(words[at]?.w ?? '')
}
const lostBy = /^(?:at|most|of|by|about|only|just|max|no|more|than|under|below|within|less)$/

/** The volts per cell that a value may stand for where it reads like a reading; undefined where it does not. */
function cellVolts(told: Told, value: Value, count: number | undefined): number | undefined {
  const { words } = told.marked
  const perCell = words[value.to]?.cut !== 2 && told.is(value.to, 'perCell')
  const read = before(told, value.from, 'reads', 5) !== undefined
  const together = told.is(value.to, 'together')
  const isVolts = value.kind === 'volts'
  const other = before(told, value.from, 'otherVolts', 4)
  if (other !== undefined && !crossesClause(told, other, value.from)) return undefined
  if (told.is(value.to, 'notReading')) return undefined
  if (perCell) return value.value
  if (together && count !== undefined) return value.value / count
  const listed = inList(told, value)
  if (!isVolts && !((read && !isWhole(told, value)) || listed)) return undefined
  if (!isVolts && told.has('ohms')) return undefined
  if (isVolts && !read && !told.has('forgot')) return undefined
  if (count !== undefined && (value.value > 5 ? !isRound(value.value) : isVolts && value.value > 4.4))
    return value.value / count
  if (count === undefined && isVolts && told.has('forgot') && value.value > 4.3) return value.value / 2
  const out = before(told, value.from, 'readsOut', 5)
  const isOut = isVolts || listed || (out !== undefined && !isCountOfCells(told, out))
  return isOut && !isSpread(value.value, 0.1) ? value.value : undefined
}

/** "3 cell lipo at 1.5" speaks of the pack, and sets amps. */
const isCountOfCells = ({ marked: { words } }: Told, at: number): boolean =>
  words[at]?.w === 'cell' && (words[at - 1]?.value ?? 1) > 1

/** So little is how far cells are apart, and no reading; nothing at all is one. */
const isSpread = (perCell_V: number, least_V: number): boolean => perCell_V !== 0 && perCell_V < least_V

const isRound = (value: number): boolean => [9, 12, 13.8, 15, 18, 19, 20, 24].includes(value)
/** Whether the volts told are those of a sound pack: what is said of a switch left on then did no harm. */
export function healthyVolts(told: Told): boolean {
  const count = countIn(told.values)
  const fine = (value: number) => value >= 3.25 && value <= 4.2
  return told.values.some(
    one =>
      (one.kind === 'volts' || one.kind === 'bare') &&
      !isWhole(told, one) &&
      ((fine(one.value) && !mayBeOfPack(told, one, count)) || fine(one.value / (count ?? 1))),
  )
}

/** "The battery reads 4.1 V", a 2S: of one cell, or of both, and then they are dead. */
const mayBeOfPack = (told: Told, { kind, to, from }: Value, count = 1): boolean =>
  told.has('together') ||
  (count > 1 &&
    kind === 'volts' &&
    !told.is(to, 'perCell') &&
    ['pack', 'it'].some(of => before(told, from, of, 3) !== undefined))

/** One of two and more readings in a row: "2.1 2.0 2.3", "3.2 2.1 3.2". */
function inList(told: Told, value: Value): boolean {
  if (isWhole(told, value)) return false
  const at = told.values.indexOf(value)
  return [told.values[at - 1], told.values[at + 1]].some(
    next =>
      next !== undefined &&
      next.kind === 'bare' &&
      !isWhole(told, next) &&
      next.value > 1.5 &&
      next.value < 4.4 &&
      Math.abs(next.from - value.from) <= 2,
  )
}

/** Packs on one board that stand apart by their told volts, counts or chemistries. */
export const boardMixed: Relation = told => {
  if (!told.has('board') || told.has('keptOff')) return undefined
  return toldApart(told) ?? voltsApart(told) ?? percentApart(told) ?? kindsApart(told)
}

/** Whether two packs and more are told by their volts, or by what they are and nothing else, and none lies apart. */
export function isAlike(told: Told): boolean {
  const { marked, values } = told
  const told_V = values.filter(one => (one.kind === 'volts' || one.kind === 'bare') && !isWhole(told, one))
  const isBare =
    values.filter(({ kind }) => kind === 'count').length > 1 && !marked.words.some(({ w }) => states.test(w))
  return (
    told.has('board') &&
    (told_V.filter(one => isReading(told, one)).length > 1 || isBare || isSaidSame(told) || isSaidWithin(told)) &&
    boardMixed(told) === undefined
  )
}

/** By how far they lie apart alone. */
function toldApart(told: Told): Judged | undefined {
  const count = countIn(told.values) ?? 1
  const far = told.values.find(one => {
    const isOfPack = told.is(one.to, 'together')
    const isVolts = one.kind === 'volts' || (one.kind === 'bare' && !isWhole(told, one))
    return isVolts && one.value / (isOfPack ? count : 1) > mostApart_V.value + 0.005 && isApart(told, one)
  })
  return far && { danger: 'boardMixed', from: far.from, to: far.to }
}

function voltsApart(told: Told): Judged | undefined {
  const count = countIn(told.values)
  const readings = told.values.filter(one => isReading(told, one))
  const cells = readings.filter(({ value }) => value >= 2.9 && value <= 4.36)
  const packs =
    count === undefined || count < 2 ? [] : readings.filter(({ value }) => value >= 3 * count && value <= 4.36 * count)
  // Of packs without a count, volts that look like two and more cells: 0.3 V between them is too far for any.
  const uncounted = count === undefined ? readings.filter(({ kind, value }) => kind === 'volts' && value > 6) : []
  return spread(cells, 1) ?? spread(packs, count ?? 1) ?? spread(uncounted, 3)
}

/** The lowest and the highest of some readings where they lie too far apart. */
function spread(readings: readonly Value[], count: number): Judged | undefined {
  const [first, ...others] = [...readings].sort((a, b) => a.value - b.value)
  const last = others.at(-1)
  if (first === undefined || last === undefined || (last.value - first.value) / count < mostApart_V.value - 0.005)
    return undefined
  return { danger: 'boardMixed', from: Math.min(first.from, last.from), to: Math.max(first.to, last.to) }
}

const wentTo = /\b(?:down|flown|sank|dropped|fell) to$/
const aims = /\b(?:to|end|until|till|til|stop|full|with|set|cutoff)$/
/** A reading of volts, not a target ("end 4.35"), nor amps or lengths. */
function isReading(told: Told, one: Value): boolean {
  if (one.kind !== 'volts' && one.kind !== 'bare') return false
  if (one.kind === 'bare' && isWhole(told, one)) return false
  const previous = textOf(told.marked.words.slice(Math.max(0, one.from - 2), one.from))
  return wentTo.test(previous) || !aims.test(previous)
}

function percentApart(told: Told): Judged | undefined {
  const shares = told.values.filter(({ kind }) => kind === 'percent')
  const [first, second] = shares
  if (first === undefined || second === undefined || Math.abs(first.value - second.value) < 12) return undefined
  return told.has('eachOfTwo') ? { danger: 'boardMixed', from: first.from, to: second.to } : undefined
}

/** One or the other, not both together. */
const isChoice = ({ marked }: Told, from: number, to: number): boolean =>
  marked.words.slice(from, to).some(({ w }) => w === 'or' || w === 'versus' || w === 'vs')

const inParallel = /\bparallel (?:charg\w+ )?(?:a |my |of )?\d+ s (?:\d+ )?(?:and|with|plus) (?:a |my )?\d+ s\b/
/** Different counts or chemistries that go on the board together. */
function kindsApart(told: Told): Judged | undefined {
  if (!told.has('shareWords') && !inParallel.test(textOf(told.marked.words))) return undefined
  for (const kind of ['count', 'chemistry'] as const) {
    const all = told.values.filter(one => one.kind === kind)
    const other = all.find(one =>
      kind === 'count' ? one.value !== all[0]?.value : one.chemistry !== all[0]?.chemistry,
    )
    if (other !== undefined && all[0] !== undefined && !isChoice(told, all[0].from, other.to))
      return { danger: 'boardMixed', from: all[0].from, to: other.to }
  }
  return undefined
}
