// One more of what was told: "a fourth at 12.05", "the third one is 14.2", "another charger of that kind".

import type { Candidate } from '../candidates/index.ts'
import { type Frame, typedIn } from '../frames/frame.ts'
import { numberNamed } from '../quantities/quantities.ts'
import { alike, outletsOfOne } from '../reading/charger-told.ts'
import type { Choice } from '../reading/choose.ts'
import { fitTo, type Kept } from '../reading/fit.ts'
import { keptEntries } from '../reading/listed.ts'
import { toldIn } from '../reading/told-pack.ts'
import type { Vocabulary } from '../sentence/vocabulary.ts'
import { choiceOf } from './choice-of.ts'
import { namesPack } from './follow-up.ts'

const ordinals = 'second third fourth fifth sixth seventh eighth ninth tenth'.split(' ')
const thing = '(?:one|pack|battery|lipo|charger|port|output|outlet|channel|slot)'
const behind = String.raw`\W*$|[,:;]| (?:at|is|was|has|reads|shows|with|of|in|stands|sits|rests)\b`
const nth = new RegExp(
  String.raw`\b(?:an?|the|my|his|her|our|and) (${ordinals.join('|')}|last|next|other)(?: ${thing}\b|(?=${behind}))`,
  'i',
)
const another =
  /\b(?:another|extra|additional|(?:one|a|\d+|two|three|four|five|six) (?:more|extra|others?)|(?:plus|add) (?:a|one)|(?:and|with|plus) one (?:at|that|on))\b/i
const howMany = /\b(\d+|two|three|four|five|six) (?:more|extra|others)\b/i
const outlet = /\b(?:port|output|outlet|channel|slot)s?\b/i
const ofPack = /\b(?:packs?|lipos?|batter(?:y|ies))\b/i
const all = /\b(?:all|both|each|every|they|them)\b/i
const mostFew = 12

/** The question before with one more of the packs, or of what charges them; undefined where nothing adds. */
export function withOneMore(
  text: string,
  values: readonly Candidate[],
  frame: Frame,
  vocabulary: Vocabulary,
): Choice | undefined {
  const { question, pending, doubts } = frame
  const command = vocabulary.find(({ name }) => name === question.command)
  const more = pending ? undefined : moreOf(text, values, frame)
  return (
    command && more && choiceOf({ ...fitTo(command, [], { ...question.options, ...more }), doubts }, question.options)
  )
}

function moreOf(text: string, values: readonly Candidate[], frame: Frame): Kept | undefined {
  const { packs, pack, charger, chargers, ports } = frame.question.options
  // Of a supply that feeds chargers.
  const isFed =
    packs === undefined && pack === undefined && charger !== undefined && frame.question.command === 'supply'
  const [, which = ''] = nth.exec(text) ?? []
  const entries = keptEntries(packs ?? '')
  // Of packs that differ, where all of them stand.
  const atAll =
    all.test(text) && entries.length > 1 && entries.every(one => one.level === undefined) && !values.some(namesPack)
  const levelOfAll = atAll ? levelIn(values, packs ?? '') : undefined
  if (levelOfAll !== undefined)
    return {
      packs: entries.map(one => `${one.count > 1 ? `${one.count}x ` : ''}${one.text} at ${levelOfAll}`).join('; '),
    }
  const isFew = text.trim().split(/\s+/).length <= mostFew
  if ((packs === undefined && !isFed) || !isFew || !(which || another.test(text)) || values.some(namesPack))
    return undefined
  const said = howMany.exec(text)?.[1] ?? '1'
  const more = numberNamed(said) ?? Number(said)
  const level = levelIn(values, packs ?? '')
  if (level === undefined && /^(?:last|next|other)$/i.test(which)) return undefined
  const isOfPacks = level !== undefined || (chargers ?? ports) === undefined || ofPack.test(text)
  if (packs !== undefined && !/charger/i.test(text) && !outlet.test(text) && isOfPacks)
    return { packs: withMore(packs, placeOf(which.toLowerCase()), more, level) }
  if (ports !== undefined) return { ports: `${Number(ports) + more * (outlet.test(text) ? 1 : Number(ports))}` }
  const { count, one } = alike(chargers ?? charger)
  const each = outlet.test(text) ? 1 : outletsOfOne(chargers, typedIn(frame))
  return one === undefined
    ? undefined
    : { [isFed ? 'charger' : 'chargers']: `${(Number.parseInt(count, 10) || 1) + more * each}x ${one}` }
}

/** Below 0 the last of those that are told; 0 behind them. */
const placeOf = (which: string): number => (which === 'last' || which === 'other' ? -1 : ordinals.indexOf(which) + 1)

const cellsAt = (volts: number, series: number): boolean => volts / series >= 2 && volts / series <= 4.5

/** Where it stands, in notation: volts that a pack of those cells may have, with or without their unit. */
function levelIn(values: readonly Candidate[], packs: string): string | undefined {
  const series = toldIn(keptEntries(packs)[0]?.pack ?? '')?.series ?? 1
  return values
    .filter(({ kind }) => kind !== 'pack')
    .toSorted((a, b) => Number(a.text.endsWith('%')) - Number(b.text.endsWith('%')))
    .map(({ kind, text, typed }) => {
      const number = /^[\d.]+/.exec(typed.replace(',', '.'))?.[0] ?? ''
      if (kind === 'state' && !/V/.test(text)) return text
      if (cellsAt(Number(number), series)) return `${number}V pack`
      return cellsAt(Number(number), 1) ? `${number}V per cell` : undefined
    })
    .find(text => text !== undefined && text !== '')
}

/** The list with so many more behind it; the place of one that is in it already is where that one stands. */
function withMore(packs: string, place: number, more: number, level: string | undefined): string {
  const entries = keptEntries(packs).flatMap(({ count, ...one }) => Array<typeof one>(count).fill(one))
  const last = entries.at(-1)
  const one = [last?.pack, last?.current].filter(text => text !== undefined).join(' at ')
  const written = entries.map(({ text }) => text)
  const told = level === undefined ? one : `${one} at ${level}`
  const at = place < 0 ? written.length - 1 : place
  if (at > 0 && at < written.length && level !== undefined) return written.with(at, told).join('; ')
  return [...written, ...Array<string>(more).fill(told)].join('; ')
}
