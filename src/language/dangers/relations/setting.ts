// What the charger is told against what the pack is: cell count and chemistry.

import { before, crossesClause, type Relation, type Told } from './relation.ts'
import type { Value } from './values.ts'

/** A charger set to another count than the pack has, unless it was set right again. */
export const wrongCount: Relation = told => {
  const counts = told.values.filter(({ kind }) => kind === 'count')
  if (counts.length < 2 || !told.has('chargerSays')) return undefined
  const set = counts.filter(count => isSet(told, count, 'countCue'))
  const pack = counts.filter(count => !set.includes(count))
  const wrong = set.filter(({ value }) => pack.every(other => other.value !== value))
  const last = wrong.at(-1)
  if (last === undefined || pack.length === 0) return undefined
  const corrected = set.some(
    ({ value, from }) => pack.some(other => other.value === value) && (from > last.from || told.has('putRight')),
  )
  return corrected || isDeniedAt(told, last) || told.has('countRight')
    ? undefined
    : { danger: 'wrongCount', from: last.from, to: last.to }
}

/** A program for another chemistry than the pack has. */
export const wrongMode: Relation = told => {
  const all = told.values.filter(({ kind }) => kind === 'chemistry')
  const set = all.filter(one => isMode(told, one))
  const pack = all.filter(one => !set.includes(one))
  const wrong = set.filter(
    one => pack.length > 0 && pack.every(other => other.chemistry !== one.chemistry) && !isDeniedAt(told, one),
  )
  const last = wrong.at(-1)
  const high = told.values.find(({ kind, value }) => kind !== 'count' && Math.abs(value - 4.35) < 0.011)
  if (last === undefined) {
    const plain = all.length > 0 && all.every(({ chemistry }) => chemistry === 'lipo')
    return plain && high !== undefined && !isDeniedAt(told, high)
      ? { danger: 'wrongMode', from: high.from, to: high.to }
      : undefined
  }
  const corrected = set.some(one => pack.some(other => other.chemistry === one.chemistry) && one.from > last.from)
  return corrected || told.has('putRight') ? undefined : { danger: 'wrongMode', from: last.from, to: last.to }
}

/** Whether a count is what the charger shows or is told, not what the pack is. */
function isSet(told: Told, { from }: Value, cue: string): boolean {
  const words = told.marked.words
  const at = before(told, from, cue, 4)
  if (at === undefined) return false
  const isVerbOnly = /^(?:is|its)$/.test(words[at]?.w ?? '')
  if (isVerbOnly) {
    const believer = before(told, at, 'believes', 7)
    return believer !== undefined && !crossesClause(told, believer, from)
  }
  return words.slice(at + 1, from).every(({ w }) => !/^(?:pack|my|for|sticker|label|packet|lipo|akku)$/.test(w))
}

function isMode(told: Told, { from, to, chemistry }: Value): boolean {
  const next = told.marked.words[to]
  if (next !== undefined && next.cut === 0 && (told.is(to, 'programWord') || next.w === 'charger'))
    return next.w !== 'charger'
  if (chemistry === 'lead') return false
  const at = before(told, from, 'modeCue', chemistry === 'nickel' ? 1 : 4)
  if (at === undefined || crossesClause(told, at, from) || isLoose(told, at, from)) return false
  const previous = told.values.filter(({ kind, to: end }) => kind === 'count' && end <= from && end >= from - 2)
  return previous.length === 0
}

/** "on", "in" and "as" stand right before a program: "on a normal lipo" tells the pack. */
function isLoose({ marked: { words } }: Told, at: number, from: number): boolean {
  if (!/^(?:on|in|as)$/.test(words[at]?.w ?? '')) return false
  return words.slice(at + 1, from).some(({ w }) => w !== 'the')
}

function isDeniedAt(told: Told, { from }: Value): boolean {
  for (let i = from - 1; i >= 0 && from - i <= 5; i -= 1) {
    if (told.marked.denies[i]) return true
    if ((told.marked.words[i + 1]?.cut ?? 0) > 0) return false
  }
  return false
}
