// Chargers told by their figures: "200W 10A" beside a pack, "one with 100 W and one with 30 W", "two ports of 6 A".

import { attempt } from '../../../ground/problem.ts'
import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { readCurrent, readPower } from '../../quantities/quantities.ts'
import { writeQuantity } from '../../quantities/quantity.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'

/** So many characters may stand between the two: a space, a comma, a stroke. */
const mostBetween = 5

const watts = /\d[\d.]*W/

/** The values, with watts and amps that nothing else of the command can be as the chargers that give them. */
export function withChargers(values: readonly Candidate[], { options }: CommandWords): readonly Candidate[] {
  const takes = (kind: string) => options.some(option => option.kind === kind)
  const several = takes('session chargers')
  const isTold = values.some(({ kind }) => kind === 'charger')
  if (takes('power') || !(several || (takes('charger') && !isTold))) return values
  const isForPack = takes('current') && values.some(({ pack }) => pack !== undefined)
  const found: Candidate[] = []
  for (let at = 0; at < values.length; at += 1) {
    const [value, next] = [values[at], values[at + 1]] as [Candidate, Candidate | undefined]
    if (value.taken && takes('drawn power') && !/A|\dV/.test(value.text) && watts.test(value.text)) {
      found.push({ ...value, kind: 'power', text: watts.exec(value.text)?.[0] ?? '' })
      // "The two together draw 900 W": told for all of them.
      if (value.shared) found.splice(0, found.length, ...found.filter(({ kind }) => kind !== 'count'))
      continue
    }
    const pair = next !== undefined && isPair(value, next)
    // "At 2 A", "3 A into a 4S" is what somebody wants to set.
    const gives =
      value.kind === 'current' &&
      !isForPack &&
      !value.each &&
      value.cue !== 'at' &&
      value.cue !== 'to' &&
      !isOfPack(value, values[at - 1]) &&
      (/a/i.test(value.typed) || value.cue === 'than')
    const alone = value.kind === 'power' || (several && gives)
    const charger = pair || alone ? attempt(() => chargerOf(value, pair ? next : undefined)) : undefined
    // Beyond what is worked with it stays what it is, to be spoken of by whoever is asked.
    found.push(charger ?? value)
    if (pair && charger) at += 1
  }
  return found
}

/** "3S 2200 with 2,2 A": no more than a pack usually gets, right behind it, is what that one is set to. */
const isOfPack = ({ text, cue, start }: Candidate, before: Candidate | undefined): boolean =>
  cue === 'with' &&
  before?.pack?.capacity_Ah !== undefined &&
  start - before.end <= ' with '.length &&
  readCurrent(text) <= before.pack.capacity_Ah

const isPair = (one: Candidate, other: Candidate): boolean =>
  [one.kind, other.kind].toSorted().join(' ') === 'current power' && other.start - one.end <= mostBetween

function chargerOf(value: Candidate, other?: Candidate): Candidate {
  const figures = other ? [value, other] : [value]
  const power = figures.find(({ kind }) => kind === 'power')
  const current = figures.find(({ kind }) => kind === 'current')
  const text = [
    current && `0.1-${writeQuantity(readCurrent(current.text), 'current')} by 0.1`,
    power && writeQuantity(readPower(power.text), 'power'),
    current ? undefined : 'charger',
  ]
  return {
    ...value,
    kind: 'charger',
    text: text.filter(part => part !== undefined).join(' '),
    typed: figures.map(({ typed }) => typed).join(' '),
    end: other?.end ?? value.end,
  }
}

/** What packs hang on: "two ports". */
export const outlets = /^(?:chargers?|outputs?|outlets?|sockets?|ports?|channels?|sides?)$/
const twofold = /\b(?:dual|double|twin|duo)\b/i
/** "Two with 60 W": counts of chargers too, where one is told. */
const described = /^(?:with|that)$/

/** All the chargers as the list that one detail takes: "2x 100W charger; 30W charger"; what outputs share as one with ports. */
export function chargersListed(values: readonly Candidate[], { options }: CommandWords) {
  const list = options.find(({ kind }) => kind === 'session chargers')
  const used = new Set<Candidate>()
  const chargers: string[] = []
  const isShared = values.some(({ kind, shared }) => kind === 'charger' && shared)
  let [ports, devices] = [1, 1]
  let isOfEach = false
  let count = 1
  for (const value of list ? values : []) {
    const { kind, text, next = '', end } = value
    // "X8, charger 400 W" counts packs.
    const isBeside =
      !/^x/i.test(value.typed) &&
      values.some(({ kind: of, start }) => of === 'charger' && start >= end && start - end <= mostBetween)
    if (
      kind === 'count' &&
      (outlets.test(next) || twofold.test(value.typed) || described.test(next) || isBeside || text === '1')
    ) {
      count = Number(text)
      if (isBeside) used.add(value)
      if (outlets.test(next) || twofold.test(value.typed)) {
        // "Three chargers with two ports": as many on each.
        ports = /^charger/.test(next) ? Math.max(ports, count) : Math.max(ports, count * devices)
        if (/^charger/.test(next)) devices = count
        used.add(value)
      }
    }
    if (kind !== 'charger' || text === '') continue
    if (count === 1 && twofold.test(value.typed)) ports = Math.max(ports, 2)
    isOfEach ||= /\b(?:per|each)\b/i.test(`${value.typed} ${next}`)
    chargers.push(`${count > 1 && !isShared ? `${count}x ` : ''}${text}`)
    count = 1
    used.add(value)
  }
  const takesPorts = options.some(({ name }) => name === 'ports')
  if (!list || used.size === 0 || (chargers.length === 0 && !takesPorts)) return undefined
  // "20W per port, 4 ports": what was told is each one's; else ports told behind it divide its watts.
  const [only = '', ...more] = chargers
  const isBehind = ports > 1 && more.length === 0 && only !== '' && !/^\d+x/.test(only) && !isShared
  if (isBehind && (isOfEach || !/W/.test(only))) chargers[0] = `${ports}x ${only}`
  const told: Record<string, string> = chargers.length > 0 ? { [list.name]: chargers.join('; ') } : {}
  if (isShared && ports === 1 && values.some(value => value.pack !== undefined)) ports = 2
  const divides = isShared || (isBehind && !/^\d+x/.test(chargers[0] ?? ''))
  if (takesPorts && ports > 1 && (divides || chargers.length === 0)) told.ports = String(ports)
  return { options: told, used }
}

/** Chargers that are all alike, in notation: "2x " before one of them, or nothing. Without `one` where they differ. */
export function alike(chargers: string | undefined): { readonly count: string; readonly one: string | undefined } {
  const [, count = '', one] = /^(\d+x )?([^;]+)$/.exec(chargers ?? '') ?? []
  return { count, one }
}
