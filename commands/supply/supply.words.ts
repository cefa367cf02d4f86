// What is said of a supply, and what could be asked next.

import type { WordsOf } from '../../src/assistant/command.ts'
import { countsLead } from '../../src/charging/setting/input.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { chargerKind, gaugeKind, lengthKind, packKind, sourceKind } from '../../src/language/kinds/values.ts'
import { startWords } from '../shared/charge.words.ts'
import { followUp } from '../shared/next.ts'
import { leadAssumed, leadWorking, ofLeadWords } from '../shared/own-lead.words.ts'
import { heldDown, menuWords } from '../shared/setting.words.ts'
import { sourceAssumed } from '../shared/source.words.ts'
import { drawn_A, type supply } from './supply.ts'
import { loadOf } from './supply-asked.ts'
import { suppliedWords, suppliedWorking, wantsFullCable } from './supply-given.words.ts'
import { flatOutWords, neededWords, neededWorking, usbNamed } from './supply-needed.words.ts'

/** More cells in series no charger is told to have. */
const mostSeries = 14

export const supplyWords: WordsOf<typeof supply> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`What a supply gives a charger by cell count, or the smallest supply for a setting.`,
    asks: [
      own('what does a PD 65W give my 0.1-10A by 0.1 charger'),
      own('which supply do I need for a 6S 5000 LiPo at 1C'),
    ],
    takes: {
      source: { about: say`the supply that feeds the charger; one is looked for when not said`, as: text => text },
      charger: { about: say`what it feeds, several with ";" between`, as: text => say`for a charger with ${text}` },
      count: { about: say`how many such chargers at once; one when not said`, as: text => say`${text} of them` },
      pack: { about: say`the pack that is to be charged`, as: text => say`to charge ${text}` },
      chemistry: {
        about: say`of the packs, with their cells or without, where none is named; ${own(chemistries[0].name)} when not said`,
        as: text => text,
      },
      current: { about: say`the charge current wanted`, as: text => say`at ${text}` },
      voltage: {
        about: say`of the supply that is looked for; those that are sold when not said`,
        as: text => say`on ${text}`,
      },
      draws: { about: say`what a charger takes at its plug`, as: text => say`each takes ${text}` },
      cable: { about: say`what the USB-C cable carries, 3 A or 5 A`, as: text => say`over a ${text} cable` },
      ...ofLeadWords(locale),
    },
    answer: (result, asked) =>
      result.kind === 'needed'
        ? neededWords(result, { ...asked, load: loadOf(asked) }, locale)
        : result.kind === 'flat out'
          ? flatOutWords(result, { ...asked, load: result.load }, locale)
          : [
              ...suppliedWords(result, asked, locale),
              ...(result.setting && asked.pack
                ? [menuWords(result.setting, asked.pack, locale), ...heldDown(result.setting, locale)]
                : []),
            ],
    start: ({ timed }, { pack }) => timed && pack && startWords(pack, timed, false, locale),
    figures: {
      supplyPower: say`power of the supply`,
      supplyVoltage: say`its lowest volts`,
      supplyCurrent: say`its current`,
      setCurrent: say`charge current`,
      cutoffPack: say`cutoff of the pack`,
      inputPower: say`input power at most`,
      chargerCount: say`such charges, or chargers flat out, at once`,
      usable: say`what it can give in all`,
      lasts: say`for how long`,
      usbSupply: say`smallest USB supply`,
      ...currentNames(locale),
      'supplyCurrent#V': of => say`supply of ${show.voltage(of)}`,
    },
    working: (result, asked) => [
      ...(result.kind === 'supplied'
        ? suppliedWorking(result, asked, locale)
        : neededWorking(result, { ...asked, load: loadOf(asked) }, locale)),
      leadWorking(result.permit.situation.lead, drawn_A(result), locale),
    ],
    assumed: (result, { source, pack, chemistry, cable, ...asked }) =>
      result.kind !== 'supplied'
        ? [leadAssumed(asked, true, locale)]
        : [
            leadAssumed(asked, countsLead(source), locale),
            pack || chemistry ? undefined : say`the packs are ${own(chemistries[0].name)}`,
            cable === undefined && wantsFullCable(result.feed, source)
              ? say`the USB-C cable is marked for 5 A`
              : undefined,
            ...sourceAssumed(source, locale),
          ],
    next: (result, { source, pack, ...asked }) => {
      if (!pack) return []
      const { charger } = loadOf(asked)
      const { gauge, length } = asked
      const details = {
        pack: packKind.write(pack),
        charger: charger && chargerKind.write(charger),
        gauge: gauge === undefined ? undefined : gaugeKind.write(gauge),
        length: length === undefined ? undefined : lengthKind.write(length),
      }
      if (source) {
        return [followUp(say`What to set?`, 'current', { ...details, source: sourceKind.write(source) })]
      }
      const usb = result.kind === 'needed' && result.usb ? usbNamed(result.usb) : undefined
      return [usb === undefined ? undefined : followUp(say`On ${own(usb)}`, 'current', { ...details, source: usb })]
    },
  }

  function currentNames({ say: tell, own: as }: Locale): Readonly<Record<`current${number}S`, Text>> {
    const names = Array.from({ length: mostSeries }, (_, index) => `${index + 1}S`)
    return Object.fromEntries(names.map(name => [`current${name}`, tell`charge current, ${as(name)}`])) as Record<
      `current${number}S`,
      Text
    >
  }
}
