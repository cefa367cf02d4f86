// What is said of a pack's log: how it has aged, and what the last charges told.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { capacityLeft } from '../../src/charging/upkeep/age-signs.ts'
import type { Fade } from '../../src/charging/upkeep/fade.ts'
import type { PackLog } from '../../src/charging/upkeep/pack-log.ts'
import type { Chart } from '../../src/charts/chart.ts'
import { logChart } from '../../src/charts/log-chart.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import type { NotedCharge } from '../../src/memory/charge-log.ts'
import { followUp } from '../shared/next.ts'
import { dayWords, signWords, thresholdWords } from './log.words.ts'
import type { logShow } from './log-show.ts'

const mostLines = 8

export const logShowWords: WordsOf<typeof logShow> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Capacity and resistance of a saved pack over time: healthy, ageing or to retire.`,
    tells: [own('show the log of wren')],
    takes: { name: { about: say`the name of the saved pack`, as: text => say`the log of ${text}` } },
    answer: ({ charges, log, fade, ...found }, { name }) => {
      const [last] = lastLines(charges, log, locale).slice(-1)
      if (!last)
        return [
          say`No charge of ${own(name)} is noted yet.`,
          say`To note one, say: I put 640 mAh back into ${own(name)}`,
        ]
      const noted = say`Last noted, ${last}`
      const told = [
        conditionWords(name, log, locale),
        holdsWords({ ...found, log }, locale),
        resistanceWords(log, locale),
        fade && fadeWords(fade, locale),
      ]
      return log.condition ? [...told, noted] : [noted, ...told]
    },
    figures: {
      charges: say`charges noted`,
      learnedCapacity: say`holds, by all its charges`,
      capacity: say`capacity by the last few`,
      ofLabel: say`of the label`,
      firstCapacity: say`when the log began`,
      cellResistance25C: say`a cell at ${show.temperature(25)} now`,
      firstResistance25C: say`when the log began`,
    },
    working: ({ charges, log }) =>
      charges.length === 0
        ? []
        : [
            ...thresholdWords(locale),
            ...lastLines(charges, log, locale),
            charges.length > mostLines
              ? say`Before these: ${show.number(charges.length - mostLines, 0)} more.`
              : undefined,
          ],
    next: ({ charges }, { name }) =>
      charges.length === 0
        ? []
        : [
            followUp(say`How long to charge it?`, 'time', { pack: name }),
            followUp(say`As rows`, 'log export', { name }),
            charges.some(({ counted_Ah }) => counted_Ah !== undefined)
              ? followUp(say`Correct the current meter`, 'log meter', { name })
              : undefined,
          ],
    charts: ({ pack, charges, log }, { name }) => pictures(own(name), pack, charges, log, locale),
  }
}

/** A pack to retire is refused before it comes to this. */
function conditionWords(name: string, { condition, signs }: PackLog, locale: Locale): Text {
  const { say, own } = locale
  if (!condition) {
    return say`The charges noted of ${own(name)} do not tell its age yet: note one with "${own('from')}", the volts per cell at rest before it, or the resistance of its cells.`
  }
  if (condition === 'healthy') return say`${own(name)} is healthy by what was noted.`
  const why = joined(
    signs.map(sign => signWords(sign, locale)),
    '; ',
  )
  return say`${own(name)} is ageing: ${why}.`
}

/** "It holds about 690 mAh (660 mAh to 720 mAh), 96 % of its label." By what it is judged by; of charges that tell that by none, by all together. */
function holdsWords(
  { holds, log, pack }: Pick<Shown, 'holds' | 'log' | 'pack'>,
  { say, show }: Locale,
): Text | undefined {
  const { capacity } = log
  const now = capacity ? { capacity_Ah: capacity.now_Ah, band_Ah: capacity.band_Ah } : holds
  if (!now) return undefined
  const { capacity_Ah, band_Ah } = now
  return say`It holds about ${show.charge(capacity_Ah)} (${show.charge(band_Ah.low)} to ${show.charge(band_Ah.high)}), ${show.percent(capacity_Ah / pack.capacity_Ah)} of its label.`
}

function resistanceWords({ resistance }: PackLog, { say, show }: Locale): Text | undefined {
  if (!resistance) return undefined
  const { now_ohm, first_ohm } = resistance
  const now = say`A cell has ${show.resistance(now_ohm)} at ${show.temperature(25)}`
  return first_ohm === undefined ? say`${now}.` : say`${now}, ${show.resistance(first_ohm)} when the log began.`
}

type Shown = Parameters<ReturnType<typeof logShowWords>['answer']>[0]

/** "At the pace of its log it holds less than 80 % of its label from about 2032-01 on (2031-11 to 2032-05)." */
function fadeWords({ at, earliest, latest }: Fade, locale: Locale): Text {
  const { say, show, own } = locale
  const month = (day: Date) => own(day.toISOString().slice(0, 7))
  const about = say`At the pace of its log it holds less than ${show.percent(capacityLeft.value.retire)} of its label from about ${month(at)} on`
  return latest
    ? say`${about} (${month(earliest)} to ${month(latest)}).`
    : say`${about} (${month(earliest)}, or years later).`
}

const lastLines = (charges: readonly NotedCharge[], { readings }: PackLog, locale: Locale): readonly Text[] => {
  const { say, show } = locale
  const first = Math.max(0, charges.length - mostLines)
  return charges.slice(first).map(({ at, charge_Ah }, index) => {
    const { capacity, at25C_ohm } = readings[first + index] ?? {}
    const told = [
      say`${show.capacity(charge_Ah)} put back`,
      capacity && say`holds ${show.capacity(capacity.capacity_Ah)}`,
      at25C_ohm === undefined ? undefined : say`${show.resistance(at25C_ohm)} a cell at ${show.temperature(25)}`,
    ]
    return say`${dayWords(at, locale)}: ${joined(told, ', ')}.`
  })
}

/** Where there is a line to draw: two readings or more. */
function pictures(
  pack: Text,
  { capacity_Ah: label_Ah }: Pack,
  charges: readonly NotedCharge[],
  { readings }: PackLog,
  locale: Locale,
): readonly Chart[] {
  const points = charges.map(({ at }, index) => ({
    at,
    capacity_Ah: readings[index]?.capacity?.capacity_Ah,
    cellResistance_ohm: readings[index]?.at25C_ohm,
  }))
  const many = (key: 'capacity_Ah' | 'cellResistance_ohm') =>
    points.filter(point => point[key] !== undefined).length > 1
  if (!many('capacity_Ah') && !many('cellResistance_ohm')) return []
  const retire_Ah = capacityLeft.value.retire * label_Ah
  return [logChart({ pack, points, retire_Ah, locale })]
}
