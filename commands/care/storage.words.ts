// What is said of bringing a pack to storage.

import type { WordsOf } from '../../src/assistant/command.ts'
import { storageTolerance_V, storeWithin_s } from '../../src/charging/upkeep/storage.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { packKind, stateKind } from '../../src/language/kinds/values.ts'
import { costWords, startWords } from '../shared/charge.words.ts'
import { ofChargeWords } from '../shared/charging.words.ts'
import { followUp } from '../shared/next.ts'
import { cite, heldDown, menuWords, settingWorking } from '../shared/setting.words.ts'
import type { storage } from './storage.ts'

export const storageWords: WordsOf<typeof storage> = locale => {
  const { say, show, own } = locale
  const { pack, from, temperature, apart } = ofChargeWords(locale)
  return {
    summary: say`Bring a pack to storage: charge or discharge, how much, how long, by when.`,
    asks: [own('bring my full 4S 1500 LiPo to storage'), own('how do I store a 3S 1300 LiHV at 4.1 V a cell')],
    takes: {
      pack,
      count: {
        about: say`how many such packs; those that share the watts of a load at once`,
        as: text => say`${text} of them`,
      },
      chemistry: { about: say`where only the storage voltage is asked for`, as: text => text },
      from,
      charger: { about: say`for a pack that must be charged up`, as: text => say`on a charger with ${text}` },
      discharge: {
        about: say`current of the load or discharger; 1C up to 1 A when not said`,
        as: text => say`discharged at ${text}`,
      },
      power: { about: say`most that the load or discharger can turn to heat`, as: text => say`with ${text} at most` },
      temperature,
      apart,
    },
    answer: (result, asked) => {
      switch (result.way) {
        case 'unknown':
          return [
            levelWords(result, locale),
            say`Say the pack and where it stands, as in "${own('from 4.2V per cell')}", and I work out which way, how much and how long.`,
          ]
        case 'up':
        case 'down':
          return [
            result.way === 'up'
              ? say`Too low to store: charge it up.`
              : say`Too full to store: discharge it today, within two days at the latest; a flight does it as well.`,
            levelWords(result, locale),
            say`With the capacity of the pack I work out how much and how long.`,
          ]
        case 'stay':
          return [
            say`Leave it as it is: ${show.perCell(result.move.rest_V)} a cell is within ${show.perCell(storageTolerance_V.value)} of storage, ${show.perCell(result.storage_V)}.`,
          ]
        case 'charge':
          return [...chargeWords(result, locale), inTurnWords(result.inAll_s, asked.count, locale)]
        case 'discharge':
          return dischargeWords(result, asked, locale)
      }
    },
    start: (result, { from }) =>
      result.way === 'charge'
        ? startWords(result.permit.situation.pack, result.timed, from !== undefined, locale)
        : undefined,
    figures: {
      storagePerCell: say`storage, a cell`,
      storageCharge: say`charge at storage`,
      storagePack: say`storage of the pack`,
      totalTime: say`time for all`,
      chargeMoved: say`charge to move`,
      chargeTime: say`time`,
      setCurrent: say`current to set`,
      energyIn: say`energy in`,
      dischargeTime: say`time`,
      dischargeCurrent: say`current`,
      energyOut: say`energy out`,
      lowestPerCell: say`a cell under the load at the end`,
    },
    working: result => [
      storageLine(result, locale),
      moveLine(result, locale),
      say`By when: ${cite(storeWithin_s, locale)}.`,
      result.way === 'stay' ? say`Near enough: ${cite(storageTolerance_V, locale)}.` : undefined,
      ...wayWorking(result, locale),
    ],
    assumed: (result, { discharge }) => [
      result.way === 'discharge' && discharge === undefined
        ? say`discharged at ${show.current(result.current_A)}`
        : undefined,
    ],
    next: (result, asked) => [
      result.way === 'charge' && asked.pack && asked.from
        ? followUp(say`To full instead`, 'time', {
            pack: packKind.write(asked.pack),
            from: stateKind.write(asked.from),
          })
        : undefined,
    ],
  }
}

type Result = Parameters<ReturnType<typeof storageWords>['answer']>[0]
type ResultOf<W extends Result['way']> = Extract<Result, { readonly way: W }>

function levelWords({ storage_V, soc, series, permit }: Result, { say, show, own }: Locale): Text {
  const { chemistry } = permit.situation.pack
  const store = say`Store ${own(chemistry.name)} at ${show.perCell(storage_V)} a cell`
  const level = series > 1 ? say`${store} (${show.voltage(storage_V * series)} for ${own(`${series}S`)})` : store
  return say`${level}, about ${show.percent(soc)} of its charge.`
}

function chargeWords({ timed, permit }: ResultOf<'charge'>, locale: Locale): readonly (Text | undefined)[] {
  return [
    locale.say`Charge it up, within two days.`,
    menuWords(timed.setting, permit.situation.pack, locale),
    costWords(timed, locale),
    ...heldDown(timed.setting, locale),
  ]
}

function dischargeWords(
  { run, time_s, current_A, storage_V, series, power_W, inAll_s }: ResultOf<'discharge'>,
  { power, count = 1 }: { readonly power?: number | undefined; readonly count?: number | undefined },
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const each = count > 1 ? say` of each` : say``
  const out = say`Discharge it: take out about ${show.charge(run.charge_Ah)}${each} at ${show.current(current_A)}`
  const takes = say`about ${show.roughly(run.duration_s)} (${show.roughly(time_s.low, Math.floor)} to ${show.roughly(time_s.high, Math.ceil)})`
  return [
    run.heldByPower && power_W !== undefined ? say`${out} or ${show.power(power_W)}, whichever is less.` : say`${out}.`,
    count > 1 && power !== undefined
      ? say`For all ${show.number(count, 0)} at once, which share ${show.power(power)}, that takes ${takes}.`
      : say`That takes ${takes}.`,
    power === undefined ? inTurnWords(inAll_s, count, locale) : undefined,
    say`Stop where it rests at ${show.perCell(storage_V)} a cell (${show.voltage(storage_V * series)} for ${own(`${series}S`)}).`,
    say`Within two days; a flight does it too.`,
  ]
}

const inTurnWords = (inAll_s: number | undefined, count = 1, { say, show }: Locale): Text | undefined =>
  inAll_s === undefined
    ? undefined
    : say`One after another, all ${show.number(count, 0)} take about ${show.roughly(inAll_s)}.`

function storageLine({ storage_V, permit }: Result, locale: Locale): Text {
  const { say, show } = locale
  const usual_V = permit.situation.pack.chemistry.storage_V
  return storage_V === usual_V.value
    ? say`Storage: ${show.perCell(storage_V)} a cell (${cite(usual_V, locale)}).`
    : say`Storage: ${show.perCell(storage_V)} a cell (the rules of this club).`
}

function moveLine(result: Result, locale: Locale): Text | undefined {
  if (!('move' in result) || result.kindOnly) return undefined
  const { say, show } = locale
  const { chemistry, capacity_Ah } = result.permit.situation.pack
  const { rest_V, storage_V, fromSoc, toSoc, moved_Ah } = result.move
  return say`By the curve at rest ${show.perCell(rest_V)} is ${show.percent(fromSoc)} and ${show.perCell(storage_V)} is ${show.percent(toSoc)} (${cite(chemistry.curve, locale)}): ${show.percent(Math.abs(fromSoc - toSoc))} × ${show.capacity(capacity_Ah)} = ${show.capacity(moved_Ah)}.`
}

function wayWorking(result: Result, locale: Locale): readonly (Text | undefined)[] {
  if (result.way === 'charge') return settingWorking(result.timed.setting, result.permit.situation.pack, locale)
  return result.way === 'discharge' ? dischargeWorking(result, locale) : []
}

function dischargeWorking({ run, current_A, permit, power_W }: ResultOf<'discharge'>, locale: Locale): readonly Text[] {
  const { say, show } = locale
  const { capacitySpread } = permit.situation.pack.chemistry
  const plain = say`Time: ${show.capacity(run.charge_Ah)} ÷ ${show.current(current_A)}`
  const time =
    run.heldByPower && power_W !== undefined
      ? say`${plain}, slower where ${show.power(power_W)} holds the current down`
      : plain
  return [
    say`${time}; ±${show.percent(capacitySpread.value)} for the spread of real packs (${cite(capacitySpread, locale)}).`,
    say`Under the load a cell reads about ${show.perCell(run.lowestPerCell_V)} at the end and climbs back at rest: a discharger that stops by volts stops early; run it again after a rest.`,
  ]
}
