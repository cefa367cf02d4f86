// What a lead of a gauge and length takes from the volts, or the thinnest gauge that a load may have.

import { type Asked, optional, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { type Lead, type LeadLoad, leadOf, thinnestLead, usualAir_C } from '../../src/charging/leads/lead.ts'
import { plugNames } from '../../src/charging/leads/plug.ts'
import { mostCurrent_A, mostRise_K, wireArea_mm2 } from '../../src/charging/leads/wire.ts'
import { chargerEfficiency } from '../../src/charging/things/practice.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { type DropLimit, dropKind } from '../../src/language/kinds/drop-kind.ts'
import {
  currentKind,
  gaugeKind,
  lengthKind,
  powerKind,
  temperatureKind,
  voltageKind,
} from '../../src/language/kinds/values.ts'
import { writePower } from '../../src/language/quantities/quantities.ts'
import { checked } from '../../src/language/quantities/quantity.ts'
import { shareOfNothing } from './supply-problems.words.ts'

const plugKind = choiceKind('plug', plugNames)

const takes = {
  gauge: optional(gaugeKind),
  length: optional(lengthKind),
  current: optional(currentKind),
  power: optional(powerKind),
  voltage: optional(voltageKind),
  drop: optional(dropKind),
  temperature: optional(temperatureKind),
  plug: optional(plugKind),
}

/** Where a gauge is wanted and no limit is named. */
export const usualShare = 0.03
export const usual_V = 12
/** Where no length of a gauge is told the answer is one for each metre. */
export const usualLength_m = 1

export const lead = service({
  name: 'lead',
  shelf: 'supply lead',
  takes,
  anyOf: [['current', 'gauge', 'power']],
  examples: [
    'lead gauge: AWG 16 length: 1m current: 10A voltage: 12V',
    'lead length: 2m current: 8A voltage: 12V drop: 3%',
    'lead gauge: AWG 24 length: 30cm current: 10A',
    'lead gauge: AWG 14',
  ],
  run: (asked): LeadFound => {
    const found = leadFor(asked)
    return { ...found, fuse_A: fuseOf(found) }
  },
  figures: ({ wire, load, voltage_V, fuse_A }) => [
    figure.current('fuse', fuse_A),
    ...(wire ? wireFigures(wire, load, voltage_V) : []),
  ],
})

function leadFor(asked: AskedLead): LeadFound {
  const {
    gauge,
    length: length_m = usualLength_m,
    power: gives_W = 0,
    voltage = usual_V,
    temperature: air_C = usualAir_C,
  } = asked
  const drawn_A = () => checked(gives_W / chargerEfficiency.value / voltage, writePower(gives_W), 'current')
  const load: LeadLoad = { length_m, current_A: asked.current ?? (gives_W && drawn_A()), air_C }
  if (gauge === undefined) return chosen(load, asked)
  if (load.current_A > 0) return judged(gauge, load, asked)
  return { ...judged(gauge, { ...load, current_A: roundedDown_A(mostCurrent_A(gauge, air_C)) }, asked), isMost: true }
}

/** Fuses are sold in these sizes, in A. */
const fuses_A = [1, 2, 3, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100, 125, 150, 200]
/** A fuse is loaded with four fifths at most for long. */
const fuseLoad = 0.8

/** A wire that is hand-warm at its most is far from harm at somewhat more. */
const wireReserve = 1.3

/** The smallest fuse that carries the current for long, or at all where a larger one would not protect the wire. */
function fuseOf({ wire, load: { current_A, air_C }, tooWarm, isMost }: LeadFound): number | undefined {
  if (isMost) return fuses_A.findLast(size_A => size_A <= current_A)
  if (!wire || tooWarm) return undefined
  const most_A = mostCurrent_A(wire.gauge, air_C) * wireReserve
  const fitting = fuses_A.filter(size_A => size_A >= current_A && size_A <= most_A)
  return fitting.find(size_A => size_A * fuseLoad >= current_A) ?? fitting.at(-1)
}

/** To two digits. */
const roundedDown_A = (current_A: number): number => {
  const digit = 10 ** (Math.floor(Math.log10(current_A)) - 1)
  return Number((Math.floor(current_A / digit) * digit).toPrecision(2))
}

type AskedLead = Asked<typeof takes>

export interface Wire extends Lead {
  readonly gauge: number
}

export interface LeadFound {
  /** Whether the gauge was asked for, and not looked for. */
  readonly told: boolean
  /** The current is not one that was asked for, but the most that the wire bears. */
  readonly isMost?: true
  readonly load: LeadLoad
  /** Close to what feeds it. */
  readonly fuse_A?: number | undefined
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
