// A lead of one's own between a source and its charger, in words: what it takes, and where it cannot count.

import type { OptionWords } from '../../src/assistant/command.ts'
import type { SourceLead } from '../../src/charging/situation/situation.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { type AskedLead, leadTold, type ofLead } from './own-lead.ts'

export const ofLeadWords = ({ say }: Locale): Readonly<Record<keyof typeof ofLead, OptionWords>> => ({
  gauge: { about: say`of a lead of your own before the charger`, as: text => say`by a lead of ${text}` },
  length: { about: say`of that lead from end to end`, as: text => say`${text} long` },
})

/** What it takes at the most that the charger draws, where that is known. */
export function leadWorking(
  lead: SourceLead | undefined,
  input_A: number | undefined,
  { say, show }: Locale,
): Text | undefined {
  if (!lead) return undefined
  const { resistance_ohm, most_A } = lead
  const bears = say`Lead: ${show.resistance(resistance_ohm)} out and back, bears ${show.current(most_A)} for long`
  return input_A === undefined
    ? say`${bears}.`
    : say`${bears}; at ${show.current(input_A)} it takes ${show.voltage(input_A * resistance_ohm)}.`
}

/** Said where a lead that was told changes nothing: half told, or behind no source that counts one. */
export function leadAssumed(asked: AskedLead, isBehindSource: boolean, { say }: Locale): Text | undefined {
  if ((asked.gauge === undefined) !== (asked.length === undefined))
    return say`the lead is not counted: its gauge and its length together tell what it takes`
  return leadTold(asked) && !isBehindSource
    ? say`the lead is not counted: it takes from the volts of a supply, a vehicle or a battery, and none is told`
    : undefined
}
