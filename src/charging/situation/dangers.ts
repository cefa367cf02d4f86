// Dangers that people tell in words. A row each: how much it weighs, and who says so.

import { practice, type Rule, type Weight } from './rule.ts'

const told = <const W extends Weight>(weight: W, from: string): Rule<W> => ({ weight, from })
const packMakers = practice('printed on packs and in their leaflets')
const clubs = practice('the safety rules of flying clubs')
const fireServices = 'published advice of fire services on lithium batteries'
const electricians = practice('electrical trade; local codes stand above it')

/** Most pressing first: where several are told, the first line speaks of the earlier one. */
export const dangers = {
  fire: told('refuse', fireServices),
  injury: told('refuse', 'first aid guides: rinse or cool under running water for 20 minutes, and call'),
  swollen: told('refuse', packMakers),
  pierced: told('refuse', packMakers),
  wet: told('refuse', packMakers),
  hotPack: told('refuse', packMakers),
  overfull: told('refuse', packMakers),
  homework: told('refuse', packMakers),
  bypass: told('refuse', packMakers),
  revive: told('refuse', packMakers),
  folkRemedy: told('refuse', fireServices),
  noCharger: told('refuse', packMakers),
  wrongCharger: told('refuse', packMakers),
  wrongMode: told('refuse', packMakers),
  wrongCount: told('refuse', packMakers),
  noBalance: told('refuse', packMakers),
  errorIgnored: told('refuse', packMakers),
  tooFast: told('refuse', packMakers),
  keptApart: told('refuse', practice('a pack that may be hurt waits apart from the others')),
  boardMixed: told('refuse', practice('parallel boards take packs of one kind and one state')),
  reversed: told('refuse', packMakers),
  crossedLeads: told('refuse', packMakers),
  seriesCharge: told('refuse', packMakers),
  badLead: told('refuse', electricians),
  mainsWet: told('refuse', electricians),
  unknownPack: told('refuse', practice('what nothing is known of is not charged')),
  unattended: told('refuse', packMakers),
  movingVehicle: told('refuse', clubs),
  softBed: told('refuse', clubs),
  burnsNear: told('refuse', clubs),
  wayBlocked: told('refuse', fireServices),
  children: told('refuse', packMakers),
  medical: told('refuse', practice('who charges is fit to act')),
  exhaust: told('refuse', 'published warnings on carbon monoxide'),
  hotPlace: told('refuse', packMakers),
  badTransport: told('refuse', 'ICAO Technical Instructions, IATA DGR 2.3, UN 3480/3481 rules for damaged cells'),
  propeller: told('refuse', clubs),
  crashed: told('must', practice('watched apart for half an hour, then judged')),
  tooLow: told('must', practice('a pack run down is measured first')),
  coldPack: told('must', 'cell datasheets: no charging below 0 °C'),
  storedFull: told('must', practice('a pack left full or empty is measured first')),
  drainsSource: told('must', practice('a source keeps what starts the engine or saves its cells')),
  leftOnCharger: told('must', packMakers),
  sealedBox: told('must', fireServices),
  loose: told('must', 'IATA DGR 2.3: terminals protected against short circuit'),
  disposal: told('must', 'battery rules of waste collection: lithium goes to a collection point'),
} as const satisfies Readonly<Record<string, Rule>>

export type Danger = keyof typeof dangers

/** Answered before anything else, past every queue and limit. */
export const emergencies: readonly Danger[] = ['fire', 'injury']
