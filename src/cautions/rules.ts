// The cautions and when each fits, most pressing first.

import type { Caution } from '../assistant/reply.ts'
import { chemistries } from '../charging/things/chemistries.ts'
import type { Chemistry } from '../charging/things/chemistry.ts'
import type { Situation } from './situation.ts'

interface Rule extends Caution {
  fits(situation: Situation): boolean
}

/** Below this cells feel the cold, above this they are warm from the flight or the sun (common practice). */
const comfortable_C = { from: 15, to: 40 }
/** Above this into a pack the connector and its solder joints matter (common practice). */
const highPackCurrent_A = 5
/** Above this into a charger thin leads and small sockets grow hot (common practice). */
const highInput_A = 8

const chemistryIs =
  (chemistry: Chemistry) =>
  ({ pack }: Situation): boolean =>
    pack?.chemistry === chemistry

const usual = chemistries[0]
const [usual_V, usualNames] = [
  usual.full_V.value,
  chemistries.filter(({ full_V }) => full_V.value === usual.full_V.value).map(({ name }) => name),
]

/** Where the full voltage of the cells is not that of the usual ones, one of the two cutoffs overcharges. */
const ownCutoff: readonly Rule[] = chemistries.flatMap(chemistry => {
  const { name, full_V, onlyAsLabelled = [] } = chemistry
  const fits = chemistryIs(chemistry)
  if (full_V.value > usual_V) {
    const label = [name, ...onlyAsLabelled].join(' or ')
    const text = `Use the ${name} cutoff only on cells whose label says ${label}: it overcharges an ordinary ${usual.name}.`
    return [{ key: 'onlyHighVoltage', text, fits }]
  }
  if (full_V.value === usual_V) return []
  const text = `Set the charger to ${name}. The ${usualNames.join(' and ')} cutoffs overcharge these cells.`
  return [{ key: 'neverLipoMode', text, fits }]
})

const isLow = ({ pack, restPerCell_V }: Situation): boolean =>
  pack !== undefined && restPerCell_V !== undefined && restPerCell_V < pack.chemistry.restFloor_V.value

export const rules: readonly Rule[] = [
  {
    key: 'retire',
    text: 'Do not try to revive such a cell. Keep the pack outdoors, away from anything that burns, and hand it in where batteries are taken back.',
    fits: ({ refusal }) => refusal === 'damaged cell',
  },
  {
    key: 'keepAway',
    text: 'An overcharged cell can catch fire long after it is unplugged: keep it outdoors, away from people and anything that burns, and watch it from a distance.',
    fits: ({ refusal }) => refusal === 'overcharged cell',
  },
  {
    key: 'aboveAdvised',
    text: 'A current above the limit heats the cells and can make them swell or catch fire; only the label or datasheet of the maker can allow it.',
    fits: ({ current_A, highest_A }) =>
      current_A !== undefined && highest_A !== undefined && current_A > highest_A * (1 + 1e-9),
  },
  {
    key: 'lowCell',
    text: 'A cell found this low may be hurt. Feel it through the first minutes, and stop if it grows warm, swells or lags behind the others.',
    fits: isLow,
  },
  {
    key: 'warmItFirst',
    text: 'Bring a cold pack indoors until the cells themselves are warm: charging cold cells plates lithium, and the damage stays.',
    fits: ({ temperature_C }) => temperature_C !== undefined && temperature_C < comfortable_C.from,
  },
  {
    key: 'letItCool',
    text: 'Let a warm pack cool in the shade before it goes on the charger, and never charge one that is hot to the touch.',
    fits: ({ temperature_C }) => temperature_C !== undefined && temperature_C > comfortable_C.to,
  },
  ...ownCutoff,
  {
    key: 'watchTheSource',
    text: 'The source is a battery too: set an alarm at its stop voltage, watch its lowest cell as well as the total, and unplug it there.',
    fits: ({ source }) => source?.kind === 'battery',
  },
  {
    key: 'keepTheStarter',
    text: 'A charge with the engine off can leave the vehicle unable to start. Measure the starter battery, and stop at the voltage given.',
    fits: ({ source }) => source?.kind === 'vehicle outlet' && source.engine === 'off',
  },
  {
    key: 'parkInTheOpen',
    text: 'Run an engine only in the open, parked, and charge outside the cabin: never while driving.',
    fits: ({ source }) => source?.kind === 'vehicle outlet' && source.engine === 'running',
  },
  {
    key: 'bankInTheShade',
    text: 'Keep the power bank in the shade and uncovered. If it switches itself off, do not force it on again: lower the current.',
    fits: ({ source }) => source?.kind === 'power bank',
  },
  {
    key: 'cable',
    text: 'Above 3 A a USB-C cable must be marked for 5 A; with another the supply gives less.',
    fits: ({ source, input_A }) =>
      (source?.kind === 'supply' || source?.kind === 'power bank') &&
      source.usbPd_W !== undefined &&
      (input_A ?? 0) > 3,
  },
  {
    key: 'thickLeads',
    text: 'At this current feel the connectors and leads after some minutes: if one is too warm to hold, stop and use a larger one.',
    fits: ({ current_A, input_A }) => (current_A ?? 0) > highPackCurrent_A || (input_A ?? 0) > highInput_A,
  },
  {
    key: 'singleCell',
    text: 'A single cell often shares its plug with others of opposite polarity: check plus and minus before you connect it.',
    fits: ({ pack }) => pack?.series === 1,
  },
  {
    key: 'balance',
    text: 'Connect the balance lead, charge in balance mode, and check that the cell count on the charger is the one on the label.',
    fits: ({ pack }) => pack !== undefined && pack.series > 1,
  },
  {
    key: 'labelRate',
    text: 'Take the charge rate from the label, not the large C number beside it: that one is for discharge.',
    fits: ({ pack }) => pack?.labelRate_C !== undefined,
  },
  {
    key: 'inspect',
    text: 'Look at the pack and feel it first: one that is swollen, dented, punctured or hot is not charged.',
    fits: () => true,
  },
]
