// One charge of one pack, simulated: precharge, constant current, constant power, constant voltage or steps down, and the balancing at its end.

import type { ChargeEnd } from '../things/charge-end.ts'
import type { Learned } from '../things/learned.ts'
import type { State, Target } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'

export interface ChargeRequest {
  readonly pack: Pack
  /** Current set on the charger, in A. */
  readonly current_A: number
  readonly from: State
  readonly target: Target
  /** Current at which the charge ends, in A. */
  readonly termination_A?: number | undefined
  /** What that goes by where it is not told in A; a tenth of the set current when absent. */
  readonly end?: ChargeEnd | undefined
  /** For a charger that stops by its clock alone, whatever the current: after how long, in s. */
  readonly timer_s?: number | undefined
  /** Most power that charger and source can put into the pack, in W. */
  readonly power_W?: number
  /** Cell temperature, in °C; 25 when absent. */
  readonly temperature_C?: number
  /** Measured capacity of the whole pack, in Ah, where known: narrows the band. */
  readonly measuredCapacity_Ah?: number
  /** What earlier charges of this very pack have told: stands above its label and a reading. */
  readonly learned?: Learned | undefined
}

export type StageKind =
  | 'precharge'
  | 'constant current'
  | 'constant power'
  | 'constant voltage'
  | 'steps down'
  | 'balancing'

export interface Stage {
  readonly kind: StageKind
  readonly duration_s: number
  readonly charge_Ah: number
  /** Energy into the pack's terminals, in Wh. */
  readonly energy_Wh: number
}

export interface CurvePoint {
  readonly time_s: number
  readonly perCell_V: number
  readonly current_A: number
  readonly soc: number
}

export interface Charge {
  readonly stages: readonly Stage[]
  readonly duration_s: number
  /** Time to the first moment at the cutoff voltage (the end of constant current and power), in s. */
  readonly timeToCutoff_s: number
  readonly charge_Ah: number
  /** Energy into the pack's terminals, in Wh. */
  readonly energy_Wh: number
  /** The part of energy_Wh that became heat in the pack, in Wh. */
  readonly heat_Wh: number
  readonly peakPower_W: number
  /** Below 0 where the cell rests below the empty end of its curve. */
  readonly startSoc: number
  readonly endSoc: number
  readonly curve: readonly CurvePoint[]
}
