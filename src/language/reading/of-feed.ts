// Levels told behind what feeds: they are its own, and no pack's.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import { isLeadResting, ofLeadBattery } from '../parts/source-draft.ts'
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
