// What feeds, beside what is charged: told in several ways, or by its kind alone; levels behind it are its own, and no pack's.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import { isLeadResting, ofLeadBattery } from '../parts/source-draft.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import { asKept } from './told/slots.ts'

type Values = readonly Candidate[]

const stands: ReadonlySet<string> = new Set([
  'at',
  'is',
  'says',
  'said',
  'shows',
  'showing',
  'reads',
  'reading',
  'stands',
])
const downTo: ReadonlySet<string> = new Set(['to', 'until', 'till'])
/** "I leave 50 %", "keep a fifth": how far it may go. */
const keeping = /^(?:leav|keep|down$)/

/**
 * A share right behind what feeds is where that stands ("a 100 Ah LiFe, its display says 60 %"), or stops ("from the
 * lead, down to half"); it is no pack's, unless one stands right before it.
 */
export function ofFeed(found: Values): Values {
  const values = rested(found)
  const isShare = ({ kind, text }: Candidate) => kind === 'state' && !/\dV|full|storage/.test(text)
  return values.map((value, at): Candidate => {
    const before = values[at - 1]
    const isBehind = before?.kind === 'source'
    if (!isShare(value) || before?.pack) return value
    const isOfPercent = value.text.endsWith('%')
    if (keeping.test(value.cue ?? '') || (isBehind && downTo.has(value.cue ?? '')))
      return isOfPercent ? asKept(value) : { ...value, kind: 'number' }
    if (!isBehind || !isOfPercent) return value
    const isShown = value.remains || stands.has(value.cue ?? '') || /full|empty|charged|left/i.test(value.typed)
    return { ...value, kind: isShown ? 'percent' : 'number' }
  })
}

/** "My 60 Ah car battery … at 12.5 V": volts behind a lead battery that it may rest at. */
function rested(values: Values): Values {
  const at = values.findIndex(({ kind, text }) => kind === 'source' && ofLeadBattery.test(text) && !/ rest /.test(text))
  const [feed, level] = [values[at], values[at + 1]]
  const isLevel = level?.kind === 'state' || level?.kind === 'voltage'
  const told_V = isLevel ? Number(/^([\d.]+)V(?: pack)?$/.exec(level.text)?.[1]) : Number.NaN
  if (!feed || !isLeadResting(feed.text, told_V)) return values
  const rest: Candidate = { ...feed, text: `${feed.text} rest ${told_V}V` }
  return values.flatMap((value, n): Values => (n === at ? [rest] : n === at + 1 ? [] : [value]))
}

const unknown = /^(?:power bank|power station|leisure battery|lead battery|generator|solar panel)$/

/**
 * What feeds, of which only the kind is told: beside so many packs or what chargers take it is open how large it must
 * be, and where it only stands there ("the generator hums") it is taken to suffice.
 */
export function withoutUnknown(values: Values, { name }: CommandWords): Values {
  const isAbout = name === 'source' || name === 'supply'
  const isLoad = values.some(({ kind, taken, pack }) =>
    name === 'supply' ? taken || pack?.capacity_Ah !== undefined : kind === 'count',
  )
  const isSpare = ({ kind, text, cue }: Candidate) =>
    kind === 'source' && unknown.test(text) && (isAbout ? isLoad : cue === undefined)
  return values.filter(value => !isSpare(value))
}

const [car, itsBattery] = [/^car(?: battery)?(?!.*Ah)/, /^(?:car|lead) battery (?=.*Ah)/]

/** "With the car, its battery has 60 Ah": one source told twice. */
export function ofOneCar(values: Values): Values {
  const of = (text: RegExp) => values.find(value => value.kind === 'source' && text.test(value.text))
  const [whole, part] = [of(car), of(itsBattery)]
  if (!whole || !part) return values
  const text = `${whole.text} ${part.text.replace(itsBattery, '')}`
  return values.flatMap(value => (value === part ? [] : [value === whole ? { ...value, text } : value]))
}

/** "The 650 Wh one", "solar gives 300 Wh": watt-hours beside the packs are those of what is to charge so many. */
export function withStore(values: Values): Values {
  if (values.some(({ kind, text }) => kind === 'source' && !unknown.test(text))) return values
  const [store] = values.filter(({ kind }) => kind === 'energy').toSorted((a, b) => sizeOf(b) - sizeOf(a))
  if (!store) return values
  return values.flatMap((value): Values => {
    if (value === store) return [{ ...value, kind: 'source', text: `power station ${value.text}` }]
    return value.kind === 'source' ? [] : [value]
  })
}

const sizeOf = ({ text }: Candidate): number => Number.parseFloat(text)
