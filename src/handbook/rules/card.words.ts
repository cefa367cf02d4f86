// Every danger in a few words, for a card that shows them all. The order is that of their table.

import type { Danger } from '../../charging/situation/dangers.ts'
import { dangers } from '../../charging/situation/dangers.ts'
import type { Locale } from '../../ground/locale.ts'
import { joined, type Text } from '../../ground/text.ts'

/** What a danger lies in: the people, the pack, how or where it is charged; or it is put right first. */
type Group = 'people' | 'pack' | 'way' | 'place' | 'first'
const groups: readonly Group[] = ['people', 'pack', 'way', 'place', 'first']

export const inShort = ({ say }: Locale): Readonly<Record<Danger, readonly [Group, Text]>> => ({
  fire: ['people', say`fire`],
  injury: ['people', say`injury`],
  swollen: ['pack', say`swollen`],
  pierced: ['pack', say`cut or dented`],
  wet: ['pack', say`wet`],
  hotPack: ['pack', say`hot`],
  overfull: ['pack', say`overfull`],
  cellsHurt: ['pack', say`with cells far apart`],
  homework: ['way', say`opened packs`],
  bypass: ['way', say`bypasses`],
  revive: ['way', say`revived cells`],
  folkRemedy: ['way', say`home remedies`],
  noCharger: ['way', say`no charger`],
  wrongCharger: ['way', say`wrong charger`],
  wrongMode: ['way', say`wrong type`],
  wrongCount: ['way', say`wrong cell count`],
  noBalance: ['way', say`no balance lead`],
  errorIgnored: ['way', say`ignored errors`],
  tooFast: ['way', say`too much current`],
  keptApart: ['way', say`hurt beside sound packs`],
  boardMixed: ['way', say`mixed boards`],
  reversed: ['pack', say`reversed`],
  crossedLeads: ['way', say`crossed leads`],
  seriesCharge: ['way', say`packs in series`],
  badLead: ['way', say`bad leads`],
  mainsWet: ['way', say`wet mains`],
  unknownPack: ['pack', say`of unknown type`],
  unattended: ['place', say`alone`],
  movingVehicle: ['place', say`moving`],
  softBed: ['place', say`on cloth`],
  burnsNear: ['place', say`near fuel`],
  wayBlocked: ['place', say`in the way out`],
  children: ['place', say`by children`],
  medical: ['place', say`when unfit`],
  exhaust: ['place', say`in exhaust`],
  hotPlace: ['place', say`in heat`],
  badTransport: ['way', say`forbidden transport`],
  propeller: ['way', say`propeller on`],
  crashed: ['first', say`a crash`],
  tooLow: ['first', say`a low pack`],
  coldPack: ['first', say`cold cells`],
  storedFull: ['first', say`a pack left full or empty`],
  drainsSource: ['first', say`a low source`],
  leftOnCharger: ['first', say`a pack left on the charger`],
  sealedBox: ['first', say`a tight box`],
  loose: ['first', say`bare plugs`],
  disposal: ['first', say`the bin`],
})

const inTable = Object.keys(dangers) as Danger[]

/** All of them in a few lines. */
export function dangerLines(locale: Locale): readonly Text[] {
  const { say } = locale
  const short = inShort(locale)
  const list = (group: Group): Text =>
    joined(
      inTable.map(key => short[key]).flatMap(([of, name]) => (of === group ? [name] : [])),
      ', ',
    )
  const lines: Readonly<Record<Group, Text>> = {
    people: say`Emergency (${list('people')}): people first, and call for help.`,
    pack: say`Never charge what is ${list('pack')}.`,
    way: say`Never: ${list('way')}.`,
    place: say`Not ${list('place')}.`,
    first: say`Put right first: ${list('first')}.`,
  }
  return groups.map(group => lines[group])
}

/** Who says so, each with the dangers that they warn of. */
export function dangerSources(locale: Locale): readonly Text[] {
  const short = inShort(locale)
  const sources = [...new Set(inTable.map(key => dangers[key].from))]
  return sources.map(from => {
    const warned = inTable.filter(key => dangers[key].from === from).map(key => short[key][1])
    return locale.say`${joined(warned, ', ')}: ${locale.own(from)}.`
  })
}
