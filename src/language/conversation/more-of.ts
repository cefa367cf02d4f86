// One more of what was told: "a fourth at 12.05", "the third one is 14.2", "another charger of that kind".

import type { Candidate } from '../candidates/index.ts'
import { type Frame, typedIn } from '../frames/frame.ts'
import { numberNamed } from '../quantities/quantities.ts'
import { fitTo, type Kept } from '../reading/fit.ts'
import { keptEntries } from '../reading/listed.ts'
import { alike, outletsOfOne } from '../reading/told/charger-told.ts'
import { toldIn } from '../reading/told/told-pack.ts'
import type { Way } from './behind.ts'
import { choiceOf } from './choice-of.ts'
import { countOf, namesPack } from './follow-up.ts'

const ordinals = 'second third fourth fifth sixth seventh eighth ninth tenth'.split(' ')
const behind = String.raw`\W*$|[,:;]| (?:at|is|was|has|reads|shows|with|of|in|stands|sits|rests)\b`
const nth = new RegExp(
  String.raw`\b(?:an?|the|my|his|her|our|and) (${ordinals.join('|')}|last|next|other)(?: (?:one|pack|battery|lipo|charger|port|output|outlet|channel|slot)\b|(?=${behind}))`,
  'i',
)
const another =
  /\b(?:another|extra|additional|(?<![.,])(one|a|\d+|two|three|four|five|six) (?:more|extra|others?)|(?:plus|add) (?:a|one)|(?:and|with|plus) one (?:at|that|on))\b/i
const outlet = /\b(?:port|output|outlet|channel|slot)s?\b/i
const ofCharger = /charger/i
const ofPack = /\b(?:packs?|lipos?|batter(?:y|ies))\b/i
const all = /\b(?:all|both|each|every|they|them)\b/i
const mostFew = 12

/** The question before with one more of the packs, or of what charges them; undefined where nothing adds. */
export const withOneMore: Way = ({ text, values, frame }, command) => {
  const { question, pending, doubts } = frame
  if (pending || values.some(namesPack)) return undefined
  const level = levelIn(values, question.options.packs ?? '')
  const more = atLevel(text, level, question.options) ?? moreOf(text, level, frame)
  return more && choiceOf({ ...fitTo(command, [], { ...question.options, ...more }), doubts }, question.options)
}

/** "Both at 3.8": where packs that differ all stand. */
function atLevel(text: string, level: string | undefined, { packs = '' }: Kept): Kept | undefined {
  const entries = keptEntries(packs)
  if (level === undefined || entries.length < 2 || !all.test(text) || entries.some(one => one.level)) return undefined
  return { packs: entries.map(({ count, text }) => `${count > 1 ? `${count}x ` : ''}${text} at ${level}`).join('; ') }
}

function moreOf(text: string, level: string | undefined, frame: Frame): Kept | undefined {
  const { packs, pack, charger, chargers, ports } = frame.question.options
  // Of a supply that feeds chargers.
  const isFed = packs === undefined && pack === undefined && charger !== undefined
  const [, which = ''] = nth.exec(text) ?? []
  const [more, said = '1'] = another.exec(text) ?? []
  const adds = which !== '' || more !== undefined
  if (!adds || countOf(text) > mostFew || (packs === undefined && !isFed)) return undefined
  if (level === undefined && placeOf(which) < 0) return undefined
  const count = numberNamed(said) ?? (Number(said) || 1)
  const isOfPacks = level !== undefined || (chargers ?? ports) === undefined || ofPack.test(text)
  if (packs !== undefined && isOfPacks && !ofCharger.test(text) && !outlet.test(text))
    return { packs: withMore(packs, placeOf(which), count, level) }
  const each = outlet.test(text) ? 1 : outletsOfOne(chargers, typedIn(frame))
  if (ports !== undefined) return { ports: `${Number(ports) + count * (outlet.test(text) ? 1 : Number(ports))}` }
  const { count: before, one } = alike(chargers ?? charger)
  return one === undefined
    ? undefined
    : { [isFed ? 'charger' : 'chargers']: `${(Number.parseInt(before, 10) || 1) + count * each}x ${one}` }
}

/** Below 0 the last of those that are told; 0 behind them. */
const placeOf = (which: string): number =>
  /^(?:last|next|other)$/i.test(which) ? -1 : ordinals.indexOf(which.toLowerCase()) + 1

const cellsAt = (volts: number, series: number): boolean => volts / series >= 2 && volts / series <= 4.5

/** Where it stands, in notation: volts that a pack of those cells may have, with or without their unit. */
function levelIn(values: readonly Candidate[], packs: string): string | undefined {
  const series = toldIn(keptEntries(packs)[0]?.pack ?? '')?.series ?? 1
  return values
    .filter(({ kind }) => kind !== 'pack')
    .flatMap(({ kind, text, typed }) => {
      const number = /^[\d.]+/.exec(typed.replace(',', '.'))?.[0] ?? ''
      if (kind === 'state' && !/V/.test(text)) return text
      if (cellsAt(Number(number), series)) return `${number}V pack`
      return cellsAt(Number(number), 1) ? `${number}V per cell` : []
    })[0]
}

/** The list with so many more behind it; the place of one that is in it already is where that one stands. */
function withMore(packs: string, place: number, more: number, level: string | undefined): string {
  const entries = keptEntries(packs).flatMap(({ count, ...one }) => Array<typeof one>(count).fill(one))
  const last = entries.at(-1)
  const one = [last?.pack, last?.current, level].filter(text => text !== undefined).join(' at ')
  const written = entries.map(({ text }) => text)
  const at = place < 0 ? written.length - 1 : place
  if (at > 0 && at < written.length && level !== undefined) return written.with(at, one).join('; ')
  return [...written, ...Array<string>(more).fill(one)].join('; ')
}
