// Dangers that people tell in words. A row each: how much it weighs, who says so, and how long it stands.

import { practice, type Rule, type Weight } from './rule.ts'

/**
 * How long it stands once it was told. It lasts with its pack until a fact corrects it, it passes from its pack or is of
 * what stands around until something else is told, or it is of one question.
 */
type Stays = 'lasts' | 'passes' | 'around' | 'once'

export interface DangerRule<W extends Weight = Weight> extends Rule<W> {
  readonly stays: Stays
}

const row =
  (stays: Stays) =>
  <const W extends Weight>(weight: W, from: string): DangerRule<W> => ({ weight, from, stays })
const [lasts, passes, around, once] = [row('lasts'), row('passes'), row('around'), row('once')]
const packMakers = practice('printed on packs and in their leaflets')
const clubs = practice('the safety rules of flying clubs')
const fireServices = 'published advice of fire services on lithium batteries'
const electricians = practice('electrical trade; local codes stand above it')

/** Most pressing first: where several are told, the first line speaks of the earlier one. */
export const dangers = {
  fire: lasts('refuse', fireServices),
  injury: once('refuse', 'first aid guides: rinse or cool under running water for 20 minutes, and call'),
  swollen: lasts('refuse', packMakers),
  pierced: lasts('refuse', packMakers),
  wet: lasts('refuse', packMakers),
  hotPack: passes('refuse', packMakers),
  overfull: lasts('refuse', packMakers),
  cellsHurt: lasts('refuse', practice('cells that drift far apart are hurt, and do not mend')),
  homework: lasts('refuse', packMakers),
  bypass: lasts('refuse', packMakers),
  revive: lasts('refuse', packMakers),
  folkRemedy: once('refuse', fireServices),
  noCharger: around('refuse', packMakers),
  wrongCharger: around('refuse', packMakers),
  wrongMode: passes('refuse', packMakers),
  wrongCount: passes('refuse', packMakers),
  noBalance: passes('refuse', packMakers),
  errorIgnored: passes('refuse', packMakers),
  tooFast: once('refuse', packMakers),
  keptApart: once('refuse', practice('a pack that may be hurt waits apart from the others')),
  boardMixed: once('refuse', practice('parallel boards take packs of one kind and one state')),
  reversed: lasts('refuse', packMakers),
  crossedLeads: passes('refuse', packMakers),
  seriesCharge: passes('refuse', packMakers),
  badLead: around('refuse', electricians),
  mainsWet: around('refuse', electricians),
  unknownPack: lasts('refuse', practice('what nothing is known of is not charged')),
  unattended: around('refuse', packMakers),
  movingVehicle: around('refuse', clubs),
  softBed: around('refuse', clubs),
  burnsNear: around('refuse', clubs),
  wayBlocked: around('refuse', fireServices),
  children: around('refuse', packMakers),
  medical: around('refuse', practice('who charges is fit to act')),
  exhaust: around('refuse', 'published warnings on carbon monoxide'),
  hotPlace: around('refuse', packMakers),
  badTransport: once('refuse', 'ICAO Technical Instructions, IATA DGR 2.3, UN 3480/3481 rules for damaged cells'),
  propeller: around('refuse', clubs),
  crashed: lasts('must', practice('watched apart for half an hour, then judged')),
  tooLow: lasts('must', practice('a pack run down is measured first')),
  coldPack: passes('must', 'cell datasheets: no charging below 0 °C'),
  storedFull: lasts('must', practice('a pack left full or empty is measured first')),
  drainsSource: once('must', practice('a source keeps what starts the engine or saves its cells')),
  leftOnCharger: once('must', packMakers),
  sealedBox: around('must', fireServices),
  loose: once('must', 'IATA DGR 2.3: terminals protected against short circuit'),
  disposal: once('must', 'battery rules of waste collection: lithium goes to a collection point'),
} as const satisfies Readonly<Record<string, DangerRule>>

export type Danger = keyof typeof dangers

/** Shown by readings alone, as words for it always come with them. */
const onlyMeasured = ['cellsHurt'] as const satisfies readonly Danger[]
export type WordedDanger = Exclude<Danger, (typeof onlyMeasured)[number]>
export const isWorded = (danger: Danger): danger is WordedDanger =>
  !(onlyMeasured as readonly Danger[]).includes(danger)

/** The danger of that name, as data write it. Throws an Error where there is none. */
export function dangerNamed(name: string): Danger {
  const danger = (Object.keys(dangers) as Danger[]).find(known => known === name)
  if (danger === undefined) throw new Error(`no danger: ${name}`)
  return danger
}

/** Answered before anything else, past every queue and limit. */
export const emergencies: readonly Danger[] = ['fire', 'injury']
export const isEmergency = ({ danger }: { readonly danger: Danger }): boolean => emergencies.includes(danger)

/** Told of a pack they mean that it is broken, whoever has it: others are near it. */
export const unsound: readonly Danger[] = ['overfull', 'swollen', 'pierced', 'wet', 'reversed']
