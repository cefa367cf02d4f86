// What a log shows, in the terms in which a battery is judged.

import type { Planned } from '../situation/situation.ts'
import type { Pack } from '../things/pack.ts'
import type { Sign } from './age-signs.ts'
import { type ChargeNote, endsFull, mostPutBack } from './charge-note.ts'
import { ages } from './health.ts'
import type { PackLog } from './pack-log.ts'

type Shown = Pick<
  Planned,
  | 'ageTimes'
  | 'agedTimes'
  | 'cells_V'
  | 'charged_A'
  | 'labelShare'
  | 'oddTimes'
  | 'putBackShare'
  | 'startShare'
  | 'when'
>

type SignOf<K extends Sign['kind']> = Extract<Sign, { readonly kind: K }>

/** Of a whole log: its signs of age, and what the last charge put back. */
export function logShown(pack: Pack, { signs }: PackLog, notes: readonly ChargeNote[]): Shown {
  const of = <K extends Sign['kind']>(kind: K) => signs.filter(sign => sign.kind === kind) as SignOf<K>[]
  const last = notes.at(-1)
  const times = Math.max(0, ...of('resistance').map(sign => sign.times))
  const apart = of('spread').length > 0 ? notes.findLast(({ cells_V }) => cells_V) : undefined
  return {
    labelShare: of('below label')[0]?.share,
    startShare: of('below itself')[0]?.share,
    // A tired pack is called no less by its log than by itself.
    ageTimes: times >= ages.value.tired ? times : undefined,
    agedTimes: times < ages.value.tired ? times : undefined,
    oddTimes: of('odd cell')[0]?.times,
    putBackShare: last && putBackShare(pack, last),
    ...cellsShown(pack, apart),
  }
}

/** Of one charge: what it put back and how fast, and its cells at the end. */
export const chargeShown = (pack: Pack, note: ChargeNote, duration_s: number | undefined): Shown => ({
  putBackShare: putBackShare(pack, note),
  charged_A: duration_s === undefined ? undefined : meanCurrent_A(note.charge_Ah, duration_s),
  ...cellsShown(pack, note),
})

export const meanCurrent_A = (charge_Ah: number, duration_s: number): number => (charge_Ah * 3600) / duration_s
const putBackShare = ({ capacity_Ah }: Pack, { charge_Ah }: ChargeNote): number => charge_Ah / capacity_Ah

function cellsShown(pack: Pack, note: ChargeNote | undefined): Shown {
  if (!note?.cells_V) return {}
  return { cells_V: note.cells_V, when: endsFull(pack, note.to) ? 'full' : 'rest' }
}

export function tellsOfPack(pack: Pack, { condition }: PackLog, notes: readonly ChargeNote[]): boolean {
  const last = notes.at(-1)
  return condition !== undefined || (last !== undefined && putBackShare(pack, last) > mostPutBack.value)
}
