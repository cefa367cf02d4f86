// What is said of a kind of pack, charger or source.

import type { traits } from '../../charging/envelope/traits.ts'
import { leadAcidLimitsOf, starterBlocks } from '../../charging/things/lead-acid.ts'
import type { WordsOf } from './lines.ts'

export const traitWords: WordsOf<typeof traits> = ({ say, show, own }) => ({
  starterUnmeasured: ({ found }) => {
    const { source } = found.known.situation
    if (source?.kind !== 'vehicle outlet') return [say`Measure the source at rest first.`]
    const { share, restFloor_V, loadFloor_V } = leadAcidLimitsOf(source)
    const of = (block_V: number) => show.voltage(starterBlocks(source) * block_V)
    return [
      say`The source battery was not measured: measure it at rest first.`,
      say`Stop at ${of(restFloor_V.value)} at rest or ${of(loadFloor_V.value)} under load at its poles, and take ${show.percent(share.value)} of its label at most.`,
    ]
  },
  starter: () => [say`With the engine off the vehicle may not start again: watch the volts, and stop in time.`],
  engineRuns: () => [say`Run an engine only in the open, parked, and charge outside the cabin: never while driving.`],
  batterySource: () => [
    say`The source is a battery too: set an alarm at its stop volts, watch its lowest cell, and unplug it there.`,
  ],
  powerBank: () => [say`Keep the power bank in the shade and uncovered. If it switches off, lower the current.`],
  mains: () => [
    say`Use a supply inside the charger's input range, kept dry, behind a safety breaker.`,
    say`A generator runs out in the open only, downwind of all.`,
  ],
  panel: () => [
    say`A panel alone stops a charger at each cloud. Let it fill a battery, and charge from that.`,
    say`Count on much less of it when the sun is low or veiled.`,
  ],
  board: () => [
    say`Measure every pack before you plug it in; main plugs first, balance plugs after.`,
    say`A fuse for each pack: one bad cell is fed by all the others.`,
  ],
  onlyAsLabelled: ({ found }) => [
    say`Use the ${own(found.known.situation.pack?.chemistry.name ?? '')} cutoff only where the label says so: it overcharges other packs.`,
  ],
  neverOtherMode: ({ found }) => [
    say`Set the charger to ${own(found.known.situation.pack?.chemistry.name ?? '')}: the cutoff of other types overcharges these cells (${show.perCell(found.known.situation.pack?.chemistry.full_V.value ?? 0)} is full).`,
  ],
  singleCell: () => [say`Plugs of single cells differ in plus and minus: check both before you connect it.`],
  balance: () => [say`Balance lead on, balance mode, and the cell count on the charger is the one on the label.`],
  labelRate: () => [
    say`Take the charge rate from the label, not the large C number beside it: that one is for flying.`,
  ],
  drained: () => [
    say`Stay with a pack while it is drained, with an alarm on its balance plug; stop where the first cell gets there.`,
  ],
  measured: () => [say`Check a reading that decides something with a second meter at the balance plug.`],
  metered: () => [
    say`Check the meter first, against a second one: half a percent of ${show.perCell(4.2)} is ${show.perCell(0.021)}, as much as the tolerance.`,
    say`Measure at the balance plug, cell by cell, with thin insulated probes: one slip there shorts a cell.`,
  ],
  carried: () => [
    say`In the cabin only, every plug covered, each pack in a bag of its own.`,
    say`Ask the airline before you travel: it may allow less.`,
    say`If the cabin bag is taken from you at the gate, take the packs out of it first. A swollen, damaged or recalled pack does not fly at all.`,
  ],
  looked: () => [say`Look at the pack and feel it first: swollen, dented, pierced or hot is not charged.`],
})
