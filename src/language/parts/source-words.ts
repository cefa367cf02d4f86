// The words that name a source.

import { wordSet } from '../../ground/word-set.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import { phrasesOf } from '../quantities/tokens.ts'

/** What sources are called by, the plainer first: what says more has more. */
export const strength = {
  supply: 0,
  vehicle: 3,
  usb: 3.1,
  'usb-c': 3.2,
  pd: 4,
  mains: 4,
  panel: 5,
  lead: 2.5,
  starter: 6,
  leisure: 6.5,
  tool: 6.5,
  station: 7,
  bank: 8,
}

export type SourceKind = keyof typeof strength

/** "Van batt", "solarpanel" too. */
const spellings = (phrase: string): readonly string[] => [
  ...new Set([phrase, phrase.replace(/battery$/, 'batt'), phrase.replace(/battery$/, 'bat'), phrase.replace(/ /g, '')]),
]

/** What each phrase says; the later kind of a run stands where it says more. */
const named: ReadonlyMap<string, readonly [SourceKind, number]> = new Map(
  (
    [
      [
        'vehicle',
        0.75,
        'cig lighter, cigarette lighter, lighter socket, car socket, car outlet, 12v socket, ciggy lighter, cig socket, cig plug, cigarette plug, car lighter, vehicle outlet, 12 v socket, cigarette socket',
      ],
      ['vehicle', 0.25, 'car, van, truck, vehicle, minibus, lorry, motorhome, kombi, estate, fourgon, coche, voiture'],
      [
        'starter',
        0.7,
        "starter battery, starter, car battery, van battery, car's battery, battery in car, battery in the car, battery of the car, tractor battery, truck battery, motorbike battery, motorcycle battery",
      ],
      [
        'lead',
        0.7,
        'lead battery, lead acid, lead - acid, lead acid battery, lead gel, lead, pb, agm, gel, gel battery, sla, sealed lead, boat battery, buttery, 12 v battery, aku',
      ],
      [
        'leisure',
        0.7,
        'leisure battery, house battery, house bank, battery bank, service battery, domestic battery, leisure batt, leasure battery, leisure, deep cycle, deep - cycle, deep cycle battery, camping battery, inverter battery, caravan battery, batterie auxiliaire',
      ],
      ['bank', 0.8, 'power bank, powerbank, power - bank, powerbanks, usb bank'],
      ['bank', 0.5, 'bank'],
      ['station', 0.75, 'power station, powerstation, camping box, field box, power box, power cube'],
      ['station', 0.25, 'station'],
      [
        'tool',
        0.6,
        'tool battery, drill battery, driver battery, saw battery, mower battery, cordless battery, e - bike battery, ebike battery, bike battery, scooter battery',
      ],
      ['tool', 0.3, 'drill, impact driver, cordless, e - bike, ebike'],
      ['pd', 0.85, 'pd, usb pd, usb - c pd, usb c pd, power delivery, usb - pd'],
      [
        'usb-c',
        0.75,
        'usb c, usb - c, usbc, type c, type - c, usb type c, phone adapter, phone adaptor, phone charger, phone plug, phone brick, tablet charger',
      ],
      ['usb', 0.6, 'usb, usb a, usb - a, usb socket, usb port, usb plug'],
      [
        'supply',
        0.7,
        'bench supply, power supply, psu, bench psu, lab supply, laboratory supply, supply, adapter, adaptor, ac adapter, wall wart, wall brick, wall thing, brick, laptop brick, laptop plug, laptop charger, laptop supply, alim, netzteil, zasilacz, wall plug, plug pack, mains adapter, mains adaptor, mains supply, mains brick, mains psu',
      ],
      ['supply', 0.3, 'laptop, plug, bench, wall, lab, workshop'],
      [
        'mains',
        0.7,
        'generator, gen, gen set, genny, inverter, invertor, agregat, generador, groupe électrogène, clubhouse socket, a socket, hookup, hook up, mains post, mains, mains socket, genset',
      ],
      ['mains', 0.3, 'socket, outlet, wall socket, wall outlet, club socket, power point'],
      ['panel', 0.75, 'solar panel, panel, solar, folding panel, solar panels, panneau solaire'],
    ] as const
  ).flatMap(([kind, sure, phrases]) =>
    phrases
      .split(', ')
      .flatMap(phrase => spellings(phrase))
      .map(phrase => [phrase, [kind, sure]] as const),
  ),
)
const phrases = phrasesOf(named.keys())
/** Words that say more of what is named already. */
export const fillers = wordSet(
  'battery batteries batt box cell accu accumulator akku socket outlet output power petrol diesel folding starter starts fuse fused new continuous rated peak',
)

/** Where a source hangs, and what stands between its figures. */
export const saysNothing = wordSet('at @ x wall mains outlet socket port')

/** A battery is none where it is a thing of the model, a lead none where it is a wire. */
const notLead = wordSet(
  'balance charge charging main the a my this that test extension power second same wire jumper one its of metre m usb adapter adaptor plug y',
)

/** A part of a car, or a place for one, feeds nothing. */
const ofCar = wordSet('boot trunk seat seats floor door window roof park parking journey ride trip drive key keys')

export function namedSource(
  sentence: Sentence,
  at: number,
): { kind: SourceKind; sure: number; after: number } | undefined {
  const after = sentence.phraseEnd(at, phrases)
  if (after === undefined) return undefined
  const phrase = sentence.tokens
    .slice(at, after)
    .map(({ word }) => word)
    .join(' ')
  const [kind, sure] = named.get(phrase) ?? ['supply', 0]
  // "When do I plug it in".
  if (phrase === 'plug' && /^(?:in|into|it|them|the|my)$/.test(sentence.word(after))) return undefined
  if (phrase === 'lead' && notLead.has(sentence.word(at - 1))) return undefined
  if (kind === 'vehicle' && sure < 0.5 && ofCar.has(sentence.word(after))) return undefined
  // "car charger" is one that the car feeds, "usb charger" one that a pack hangs on.
  if (/^chargers?$/.test(sentence.word(after)) && kind !== 'supply' && kind !== 'tool') return undefined
  return { kind, sure: phrase === 'lead' ? 0.4 : sure, after }
}
