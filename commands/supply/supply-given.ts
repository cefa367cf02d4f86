// A supply and a charger: the offer taken, and the charge current that results for each cell count.

import type { Context } from '../../src/assistant/context.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { feedOf } from '../../src/charging/setting/old-feed.ts'
import { adviseSetting } from '../../src/charging/setting/old-setting.ts'
import {
  behindCable,
  type Carried,
  carriedBySeries,
  plainCable_A,
} from '../../src/charging/sources/supply.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargerEfficiency } from '../../src/charging/things/practice.ts'
import type { Source } from '../../src/charging/things/source.ts'
import type { Show } from '../../src/ground/show.ts'
import { chargerKind, packKind, sourceKind } from '../../src/language/kinds/values.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { settingWords } from '../shared/setting-words.ts'
import { cite, settingWorking } from '../shared/working.ts'
import { sourceAssumed, sourceWorking } from './source-words.ts'

interface Given {
  readonly source: Source
  readonly charger?: Charger
  readonly pack?: Pack
  readonly chemistry?: Chemistry
  readonly cable?: number
}

/** A cable that carries 5 A is assumed out loud where an offer above 3 A hangs on it. */
const fullCable_A = 5

export function suppliedAnswer(
  { source, charger, pack, chemistry, cable }: Given,
  { house, show }: Context,
): Answer {
  const fed = behindCable(source, cable ?? fullCable_A)
  const feed = feedOf({ source: fed, charger, limits: house })
  const situation = { source, pack }
  if ('refusal' in feed) return refusedAnswer(feed, situation, show)
  const cells = pack?.chemistry ?? chemistry ?? chemistries[0]
  const setting = pack && adviseSetting({ pack, charger, source: fed, limits: house })
  if (setting && 'refusal' in setting) return refusedAnswer(setting, situation, show)
  const carried = carriedBySeries(feed, charger, cells).filter(
    ({ series }) => !pack || series === pack.series,
  )
  const figure = figuresIn(show)
  const overCable = (feed.offer?.current_A ?? 0) > plainCable_A.value && 'usbPd_W' in source
  return {
    ...(setting && { verdict: setting.verdict }),
    headline: [
      gives(source, feed.power_W, feed.offer, show),
      atMost(carried, show),
      ...(setting && pack ? [settingWords(setting, pack, show)] : []),
    ].join(' '),
    figures: [
      figure.power('supplyPower', 'power of the supply', feed.power_W),
      figure.voltage('supplyVoltage', 'its lowest volts', feed.lowest_V),
      figure.current('supplyCurrent', 'its current', feed.current_A),
      ...carried.flatMap(({ series, current_A }) =>
        current_A === undefined
          ? []
          : [figure.current(`current${series}S`, `charge current, ${series}S`, current_A)],
      ),
    ],
    working: [
      ...offersLine(fed, show),
      ...sourceWorking(fed, feed, show),
      ...('usbPd_W' in source && source.usbPd_W !== undefined ? [`Cable: ${cite(plainCable_A)}.`] : []),
      ...carried.slice(0, 1).map(one => shareLine(one, cells, feed.power_W, charger, show)),
      ...(setting && pack
        ? settingWorking(setting, pack, show)
        : [
            'This is what the supply carries. What a pack may take is for its label and chemistry to say: ask "current".',
          ]),
    ],
    cautions: cautionsFor({
      ...situation,
      input_A: feed.current_A,
      ...(setting && { current_A: setting.current_A }),
    }),
    followUps: pack
      ? [
          followUp('What to set?', 'current', {
            pack: packKind.write(pack),
            ...(charger && { charger: chargerKind.write(charger) }),
            source: sourceKind.write(source),
          }),
        ]
      : [],
    assumed: [
      ...(pack || chemistry ? [] : [`the packs are ${cells.name}`]),
      ...(overCable && cable === undefined ? ['the USB-C cable is marked for 5 A'] : []),
      ...sourceAssumed(source, show),
    ],
  }
}

function gives(
  source: Source,
  power_W: number,
  offer: { readonly voltage_V: number; readonly current_A: number } | undefined,
  show: Show,
): string {
  const name = sourceKind.write(source)
  return offer
    ? `${name} feeds this with ${show.voltage(offer.voltage_V)} and up to ${show.current(offer.current_A)}, ${show.power(power_W)}.`
    : `${name} feeds this with at least ${show.power(power_W)}.`
}

function atMost(carried: readonly Carried[], show: Show): string {
  const parts = carried.map(({ series, current_A }) =>
    current_A === undefined ? `${series}S not at all` : `${series}S ${show.current(current_A)}`,
  )
  return `It carries at most: ${parts.join(', ')}.`
}

/** How the current of one cell count came about. */
function shareLine(
  { series, cutoffPack_V }: Carried,
  cells: Chemistry,
  power_W: number,
  charger: Charger | undefined,
  show: Show,
): string {
  const efficiency = charger?.efficiency ?? chargerEfficiency.value
  const share = `${show.power(power_W)} × ${show.number(efficiency, 2)} ÷ ${show.voltage(cutoffPack_V)} = ${show.current((power_W * efficiency) / cutoffPack_V)}`
  const rule = charger?.efficiency === undefined ? ` (${cite(chargerEfficiency)})` : ''
  const then = charger ? '; then the steps and the power of the charger count' : ''
  return `${series}S ${cells.name} at its cutoff: ${share}${rule}${then}.`
}

/** All that the supply offers behind its cable, where there is a choice. */
function offersLine(source: Source, show: Show): string[] {
  const offers = source.kind === 'supply' || source.kind === 'power bank' ? (source.offers ?? []) : []
  if (offers.length < 2) return []
  const list = offers.map(
    ({ voltage_V, current_A }) => `${show.voltage(voltage_V)} ${show.current(current_A)}`,
  )
  return [`Offers: ${list.join(', ')}.`]
}
