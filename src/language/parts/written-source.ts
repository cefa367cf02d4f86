// A source that was told, in notation, as far as it was told.

import { decimalText } from '../candidates/sentence/written.ts'
import { type SourceDraft, usb_V } from './source-draft.ts'

const figures = (...words: readonly (string | false | undefined)[]): string => words.filter(Boolean).join(' ')

/** Volts with amps, or else with watts. */
const pairOf = ({ offers = [], ...last }: SourceDraft): string =>
  [...offers, last]
    .map(({ volts, amps, watts }) =>
      figures(
        volts !== undefined && `${volts}V`,
        amps !== undefined && `${decimalText(amps)}A`,
        amps === undefined && watts !== undefined && `${decimalText(watts)}W`,
      ),
    )
    .join(', ')

const mostUsb_W = 240

/** A battery as a pack is written. */
export const isLithium = ({ kind, chemistry }: SourceDraft): boolean =>
  kind === 'tool' || (chemistry !== undefined && chemistry !== 'AGM')

/** In notation, as far as it was told. */
export function writtenSource(draft: SourceDraft): string {
  const { kind, volts, amps, watts, energy_Wh, capacity_Ah, rated } = draft
  const wattsText = watts !== undefined && `${decimalText(watts)}W`
  if (isLithium(draft)) return writtenLithium(kind === 'tool' ? { chemistry: 'Li-ion', ...draft } : draft)
  const pair = pairOf(draft)
  const isPair = amps !== undefined && volts !== undefined
  switch (kind) {
    case 'bank':
    case 'station': {
      const energy = energy_Wh !== undefined && `${decimalText(energy_Wh)}Wh`
      // Beyond what USB gives they are those of a socket, whose volts are taken to suit.
      const output = isPair ? pair : wattsText && (watts > mostUsb_W ? `12V ${wattsText}` : `PD ${wattsText}`)
      const mAh = energy_Wh === undefined && capacity_Ah !== undefined && `${decimalText(capacity_Ah, 3)}mAh`
      return figures(kind === 'bank' ? 'power bank' : 'power station', energy, mAh, rated && `at ${usb_V}V`, output)
    }
    case 'pd':
    case 'usb-c':
      return isPair ? `USB ${pair}` : figures('PD', wattsText)
    case 'usb':
      if (watts === undefined || volts !== undefined || amps !== undefined) return figures('USB', pair)
      return watts > 15 ? `PD ${wattsText}` : `USB 5V ${decimalText(watts / usb_V)}A`
    case 'mains':
      return figures('generator', draft.mains_V && amps ? `${decimalText(draft.mains_V * amps)}W` : pair)
    case 'panel':
      return figures('solar panel', pair)
    case 'vehicle':
    case 'starter':
    case 'leisure':
    case 'lead':
      return writtenLead(draft)
    default:
      if (capacity_Ah !== undefined) return writtenLead({ ...draft, kind: 'lead' })
      return figures((pair === '' || pair === wattsText) && 'supply', pair)
  }
}

function writtenLead({ kind, volts, rest, amps, engine, capacity_Ah }: SourceDraft): string {
  const isRest = rest === undefined && volts !== undefined && volts.includes('.')
  const rested = rest ?? (isRest ? volts : undefined)
  const isPlain = kind === 'lead' && engine === undefined
  const started = kind === 'vehicle' && capacity_Ah === undefined ? 'car' : 'car battery'
  return figures(
    kind === 'leisure' ? 'leisure battery' : isPlain ? 'lead battery' : started,
    volts !== undefined && Number(volts) === 24 && '24V',
    amps !== undefined && `${decimalText(amps)}A`,
    engine !== undefined && `engine ${engine}`,
    rested !== undefined && `rest ${rested}V`,
    capacity_Ah !== undefined && `${decimalText(capacity_Ah)}Ah`,
  )
}

/** "100ah lifepo 12v": a battery as a pack is written, its cells by its volts. */
function writtenLithium({ chemistry = '', volts = '12', capacity_Ah }: SourceDraft): string {
  const perCell = chemistry === 'LiFe' ? 3.2 : 3.6
  const told_V = Number(volts)
  // Tools print the volts of their full cells, 4 V each, and round them; else those that a cell keeps.
  const isFull = chemistry === 'Li-ion' && (told_V === 12 || told_V % 20 === 0)
  const series = Math.max(1, isFull ? told_V / 4 : Math.round(told_V / perCell))
  return figures(`${series}S`, capacity_Ah !== undefined && `${decimalText(capacity_Ah, 3)}mAh`, chemistry)
}
