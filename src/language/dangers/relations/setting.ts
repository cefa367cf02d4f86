// What the charger is told against what the pack is: cell count and chemistry.

import { chemistries } from '../../../charging/things/chemistries.ts'
import { numberNamed } from '../../quantities/quantities.ts'
import { before, clauseAt, crossesClause, isWhole, type Relation, type Told } from './relation.ts'
import { isInFlight } from './speed.ts'
import type { Value } from './values.ts'

/** A charger set to another count than the pack has, unless it was set right again. */
export const wrongCount: Relation = told => {
  const counts = countsIn(told)
  if (counts.length < 2 || isInFlight(told) || told.marked.words.some(({ w }) => w === 'series')) return undefined
  if (counts.some(part => counts.some(({ value }) => value > part.value && value === partsOf(told, part) * part.value)))
    return undefined
  const set = counts.filter(count => isSet(told, count))
  const pack = counts.filter(count => !set.includes(count) && !isOfAnother(told, count))
  const wrong = set.filter(one => pack.every(other => other.value !== one.value) && !isDeniedAt(told, one))
  const last = wrong.at(-1)
  if (last === undefined || pack.length === 0 || told.has('countRight') || told.has('putRight')) return undefined
  const isRight = ({ value, from }: Value) =>
    from > last.from &&
    pack.some(other => other.value === value) &&
    before(told, from, 'countCue', from - last.to) !== undefined
  return set.some(isRight) ? undefined : { danger: 'wrongCount', from: last.from, to: last.to }
}

/** "12S as two 6S": how many of them make up a whole. */
const partsOf = ({ marked: { words } }: Told, { from }: Value): number => {
  const typed = words[from - 1]?.w ?? ''
  return numberNamed(typed) ?? Number(typed)
}

/** No unit stands behind it. */
function isAlone({ marked: { words } }: Told, { to }: Value): boolean {
  const next = words[to]
  return next === undefined || next.cut > 0 || /^(?:on|by|in|for|and|so|but|cells?)$/.test(next.w)
}

/** Counts told of a pack or a menu, not how far a charger goes; a bare number counts where cells are counted. */
function countsIn(told: Told): readonly Value[] {
  const isCount = (one: Value): boolean => {
    const isSmall = one.kind === 'bare' && one.value > 0 && one.value < 13
    return isSmall && isWhole(told, one) && isAlone(told, one) && told.is(one.from - 1, 'counting')
  }
  return told.values.flatMap(one => {
    const cells = cellsOfWires(one) ?? cellsOfLabel(one)
    if (cells !== undefined) return [{ ...one, kind: 'count' as const, value: cells }]
    return (one.kind === 'count' && before(told, one.from, 'capable', 3) === undefined) || isCount(one) ? [one] : []
  })
}

/** A balance plug has a wire more than cells. */
const cellsOfWires = ({ kind, value }: Value): number | undefined => (kind === 'wires' ? value - 1 : undefined)

/** "14.8 V" on a label is 4S. */
function cellsOfLabel({ kind, value }: Value): number | undefined {
  const cells = Math.round(value / chemistries[0].nominal_V.value)
  const isLabel = kind === 'volts' && cells > 1 && Math.abs(cells * chemistries[0].nominal_V.value - value) < 0.01
  return isLabel ? cells : undefined
}

const isSame = ([first, ...others]: readonly Value[]): boolean =>
  others.length > 0 && others.every(one => one.value === first?.value && one.chemistry === first.chemistry)

/** Whether the same is told of the pack and of the charger. */
export const isSameCount = (told: Told): boolean => isSame(countsIn(told))
export const isSameType = ({ values }: Told): boolean => isSame(values.filter(({ kind }) => kind === 'chemistry'))

/** "4S 1300 with a charger for lead batteries": made for others than the pack that is told. */
export const wrongCharger: Relation = told => {
  const { words } = told.marked
  const at = words.findIndex(
    ({ w }, from) => /^chargers?$/.test(w) && isOfOther(words.slice(from + 1, from + mostToDevice).map(word => word.w)),
  )
  const isOfPack = told.values.some(({ kind, chemistry }) => kind === 'count' || (chemistry && lithium.has(chemistry)))
  const span: Value = { kind: 'chemistry', value: 0, from: at, to: at + 3 }
  return at < 0 || !isOfPack || isDeniedAt(told, span) ? undefined : { danger: 'wrongCharger', from: at, to: at + 3 }
}
const mostToDevice = 4
/** "For lead batteries", "from the toy car". */
const isOfOther = ([joint = '', first = '', second = '']: readonly string[]): boolean =>
  (joint === 'for' && otherBatteries.test(first)) ||
  (/^(?:from|of|off)$/.test(joint) && [first, second].some(word => otherDevices.test(word)))
const otherDevices = /^(?:toys?|drills?|scooters?|shavers?|vacuum|hoover|mower|screwdriver|torch|cameras?)$/
const otherBatteries = /^(?:lead|nimhs?|nicads?|nicd|nickel|agm)$/
const lithium: ReadonlySet<string> = new Set(['lipo', 'lihv', 'liion', 'life'])

/** A program for another chemistry than the pack has. */
export const wrongMode: Relation = told => {
  const all = told.values.filter(({ kind }) => kind === 'chemistry')
  const set = all.filter(one => isMode(told, one))
  const pack = all.filter(one => !set.includes(one))
  const isPlain = pack.length === 0 && told.has('plainPack')
  const differs = ({ chemistry }: Value) =>
    isPlain ? chemistry !== 'lipo' : pack.length > 0 && !pack.some(other => suits(chemistry, other.chemistry))
  const wrong = set.filter(one => differs(one) && !isDeniedAt(told, one))
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

/** A LiHV pack that is charged as LiPo ends below its own volts: less goes in, and that is all. */
const suits = (mode: Value['chemistry'], pack: Value['chemistry']): boolean =>
  mode === pack || (mode === 'lipo' && pack === 'lihv')

const packWord = /^(?:packs?|my|mine|stickers?|labels?|packet|lipos?|akku|battery|source|supply|actually|really)$/
const turn = /^(?:but|although|though|whereas|while)$/
/** "The one before was 4S", "a 3S is next". */
const isOfAnother = (told: Told, { from, to }: Value): boolean =>
  before(told, from, 'otherOne', 4) !== undefined || [to, to + 1].some(at => told.is(at, 'otherOne'))

/** Whether a count is what the charger shows or is told, not what the pack is. */
function isSet(told: Told, { from, to }: Value): boolean {
  const { words } = told.marked
  const said = (at: number) => words[at]?.w ?? ''
  if (told.is(to, 'programWord') || isForPack(told, to)) return true
  if (/^on (?:a|my|this)$/.test(`${said(from - 2)} ${said(from - 1)}`)) return false
  const at = before(told, from, 'countCue', 4)
  const isOfPack = words[at ?? 0]?.cut === 0 && packWord.test(said((at ?? 0) - 1))
  if (at === undefined || isOfPack || isPack(told, from, to)) return false
  // "Set to 4S, 3S 1300": the first is set.
  if (countsIn(told).some(one => one.from > at && one.to <= from && crossesClause(told, one.from, from))) return false
  if (/^(?:is|its)$/.test(said(at))) {
    const believer = before(told, at, 'believes', 7)
    if (believer === undefined || crossesClause(told, believer, from)) return false
    return words.slice(believer, from).every(({ w }) => !turn.test(w))
  }
  return words.slice(at + 1, from).every(({ w }) => !packWord.test(w) && !turn.test(w))
}

/** "A 4S pack", "my 4S 1500". */
function isPack({ marked: { words } }: Told, from: number, to: number): boolean {
  const next = words[to]
  if (next === undefined || next.cut > 0) return false
  return (
    /^(?:packs?|battery)$/.test(next.w) ||
    ((next.value ?? 0) >= 80 && /^(?:a|my|the|our)$/.test(words[from - 1]?.w ?? ''))
  )
}

/** "4S for my 3S pack": a count alone, for a pack of which another is told. */
function isForPack({ values, marked: { words }, is }: Told, to: number): boolean {
  const pack = values.find(({ kind, from }) => kind === 'count' && from > to && from <= to + 2)
  const joined = words.slice(to, pack?.from).map(({ w }) => w)
  return (
    pack !== undefined &&
    !is(pack.to, 'programWord') &&
    !is(pack.to, 'balanceLead') &&
    /^(?:for|on|with) (?:a|my|the|this)$/.test(joined.join(' '))
  )
}

/** "Charged by mistake in LiHV mode": another type than the pack's was set. */
export const modeByMistake: Relation = told => {
  const { words } = told.marked
  const mode = told.values.find(({ kind, to }) => kind === 'chemistry' && told.is(to, 'programWord'))
  const isMistake = words.some(({ w }) => /^(?:mistake|accident|accidentally|mistakenly|wrongly)$/.test(w))
  const isRight = told.has('putRight') || words.some(({ w }) => /^(?:almost|nearly|noticed|stopped|before)$/.test(w))
  return mode && isMistake && !isRight ? { danger: 'wrongMode', from: mode.from, to: mode.to } : undefined
}

function isMode(told: Told, { from, to, chemistry }: Value): boolean {
  const next = told.marked.words[to]
  if (next !== undefined && next.cut === 0 && (told.is(to, 'programWord') || next.w === 'charger'))
    return next.w !== 'charger'
  if (chemistry === 'lead') return false
  if (isAllItDoes(told, from)) return true
  const at = before(told, from, 'modeCue', chemistry === 'nickel' ? 1 : 4)
  // "The same rule as LiPo".
  if (told.marked.words.slice(Math.max(0, from - 4), from).some(({ w }) => w === 'same')) return false
  if (at === undefined || crossesClause(told, at, from) || isLoose(told, at, from)) return false
  // "Set my 4S LiFe": the pack.
  return !told.values.some(({ kind, to: end }) => kind === 'count' && end > at && end <= from && end >= from - 2)
}

/** "The charger only does LiPo", "it just knows LiPo and LiHV". */
function isAllItDoes(told: Told, from: number): boolean {
  const words = told.marked.words.slice(clauseAt(told, from)[0], from).map(({ w }) => w)
  const can = words.findLastIndex(word => /^(?:does|do|has|knows?|supports?|takes?|charges?|handles?)$/.test(word))
  const isNear = can >= 0 && words.slice(can + 1).every(word => onlyTypes.test(word))
  return (
    isNear &&
    words.slice(Math.max(0, can - 2), can + 2).some(word => /^(?:only|just)$/.test(word)) &&
    words.slice(0, can).some(word => /^(?:chargers?|it|thing|box|one|mine|his|hers)$/.test(word))
  )
}
const onlyTypes = /^(?:only|just|a|an|the|and|or|plain|li|ion|lipos?|lihvs?|lifes?|liion|nimh)$/

/** "on", "in" and "as" stand right before a program: "on a normal lipo" tells the pack. */
function isLoose({ marked: { words } }: Told, at: number, from: number): boolean {
  if (!/^(?:on|in|as)$/.test(words[at]?.w ?? '')) return false
  return words.slice(at + 1, from).some(({ w }) => w !== 'the')
}

export function isDeniedAt(told: Told, { from }: Value): boolean {
  for (let i = from - 1; i >= 0 && from - i <= 5; i -= 1) {
    if (crossesClause(told, i, i + 1)) return false
    if (told.marked.denies[i]) return true
  }
  return false
}
