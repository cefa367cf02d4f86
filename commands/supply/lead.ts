// What a lead of a gauge and length takes from the volts, or the thinnest gauge that a load may have.

import { type Asked, optional, required, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { type Lead, type LeadLoad, leadOf, thinnestLead } from '../../src/charging/sources/lead.ts'
import { mostRise_K, wireArea_mm2 } from '../../src/charging/things/wire.ts'
import { type DropLimit, dropKind } from '../../src/language/kinds/drop-kind.ts'
import { currentKind, gaugeKind, lengthKind, temperatureKind, voltageKind } from '../../src/language/kinds/values.ts'
import { shareOfNothing } from './supply-problems.words.ts'

const takes = {
  gauge: optional(gaugeKind),
  length: required(lengthKind),
  current: required(currentKind),
  voltage: optional(voltageKind),
  drop: optional(dropKind),
  temperature: optional(temperatureKind),
}

/** Where a gauge is wanted and no limit is named. */
export const usualShare = 0.03
export const usual_V = 12
export const usualAir_C = 20

export const lead = service({
  name: 'lead',
  takes,
  examples: [
    'lead gauge: AWG 16 length: 1m current: 10A voltage: 12V',
    'lead length: 2m current: 8A voltage: 12V drop: 3%',
    'lead gauge: AWG 24 length: 30cm current: 10A',
  ],
  run: asked => {
    const { gauge, length, current, temperature = usualAir_C } = asked
    const load: LeadLoad = { length_m: length, current_A: current, air_C: temperature }
    return gauge === undefined ? chosen(load, asked) : judged(gauge, load, asked)
  },
  figures: ({ wire, load, voltage_V }) => (wire ? wireFigures(wire, load, voltage_V) : []),
})

type AskedLead = Asked<typeof takes>

export interface Wire extends Lead {
  readonly gauge: number
}

export interface LeadFound {
  /** Whether the gauge was asked for, and not looked for. */
  readonly told: boolean
  readonly load: LeadLoad
  /** Absent where no single wire will do. */
  readonly wire: Wire | undefined
  readonly voltage_V: number | undefined
  /** The drop that is allowed, in V. */
  readonly most_V: number | undefined
  readonly tooWarm: boolean
  readonly tooMuch: boolean
  /** The thinnest gauge that will do, where the told one will not. */
  readonly better: number | undefined
}

/** The drop that is allowed, in V; undefined where the question sets no limit. Throws a Problem for a share of nothing. */
function limitOf(limit: DropLimit | undefined, voltage_V: number | undefined): number | undefined {
  if (limit === undefined || limit.kind === 'volts') return limit?.drop_V
  if (voltage_V === undefined) throw shareOfNothing()
  return limit.share * voltage_V
}

function judged(gauge: number, load: LeadLoad, { voltage: voltage_V, drop }: AskedLead): LeadFound {
  const most_V = limitOf(drop, voltage_V)
  const wire = { ...leadOf(gauge, load), gauge }
  const tooWarm = wire.rise_K > mostRise_K.value
  const tooMuch = most_V !== undefined && wire.warmDrop_V > most_V
  const better = tooWarm || tooMuch ? thinnestLead(load, most_V) : undefined
  return { told: true, load, wire, voltage_V, most_V, tooWarm, tooMuch, better }
}

function chosen(load: LeadLoad, { voltage, drop }: AskedLead): LeadFound {
  const voltage_V = drop === undefined ? (voltage ?? usual_V) : voltage
  const most_V = limitOf(drop ?? { kind: 'share', share: usualShare }, voltage_V)
  const gauge = thinnestLead(load, most_V)
  const wire = gauge === undefined ? undefined : { ...leadOf(gauge, load), gauge }
  return { told: false, load, wire, voltage_V, most_V, tooWarm: false, tooMuch: false, better: undefined }
}

function wireFigures(wire: Wire, { current_A }: LeadLoad, voltage_V: number | undefined) {
  const { drop_V, warmDrop_V, warmHeat_W, rise_K } = wire
  const settles = Number.isFinite(warmDrop_V)
  return [
    figure.count('gauge', wire.gauge),
    figure.area('area', wireArea_mm2(wire.gauge)),
    figure.resistance('resistance', wire.resistance_ohm),
    figure.drop('drop', drop_V, settles ? { low: drop_V, high: warmDrop_V } : undefined),
    figure.power('heat', settles ? warmHeat_W : current_A * drop_V),
    Number.isFinite(rise_K) ? figure.temperature('rise', rise_K) : undefined,
    voltage_V === undefined || !settles
      ? undefined
      : figure.voltage('chargerSees', Math.max(0, voltage_V - warmDrop_V)),
  ]
}
