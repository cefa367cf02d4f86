// What is said of each danger: first that it is one, then what to do.

import type { dangers } from '../../charging/situation/dangers.ts'
import type { WordsOf } from './lines.ts'

export const dangerWords: WordsOf<typeof dangers> = ({ say }) => ({
  fire: () => [
    say`Get away from it now, everybody out of the smoke, and call the fire service.`,
    say`Do not touch, move or unplug it unless that is safe from where you stand.`,
    say`Close the door; from outside tell them: lithium battery. Do not go back in for anything.`,
  ],
  injury: () => [
    say`First aid first, and let somebody call for help while you do it.`,
    say`A burn, or something in the eye or on the skin: cool running water for 20 minutes at once, then have it seen.`,
    say`Something swallowed, or smoke breathed: to fresh air, and call the emergency number or go to hospital at once, even if nothing hurts. A cut: press on it.`,
    say`A shock from the mains: power off before you touch anybody. The pack waits: do not charge, open or move it.`,
  ],
  swollen: () => [
    say`Do not charge, discharge or fly it: a swollen pack can catch fire.`,
    say`Hot, hissing or smoking? Get away and call the fire service.`,
    say`Else unplug it. Put it outdoors, alone, on stone, far from anything that burns.`,
    say`Never press, pierce or bathe it.`,
    say`Tape the plugs and hand it in: tell them "damaged lithium".`,
  ],
  pierced: () => [
    say`Do not charge it: a cut, dented, leaking or burnt cell can catch fire hours later.`,
    say`Put it outdoors, alone, on stone, and watch it from a distance; no tape or glue makes it sound again.`,
    say`Hand it in where batteries are collected: say that it is damaged lithium.`,
  ],
  wet: () => [
    say`Do not charge a pack that got wet: water inside the wrap shorts the cells, often days later.`,
    say`Unplug it, put it outdoors on stone, away from anything that burns, and hand it in.`,
  ],
  hotPack: () => [
    say`Do not charge a hot pack: let it cool to the air around it first.`,
    say`If it grew hot by itself or on the charger, unplug it, put it outdoors on stone, and do not charge it again.`,
    say`Warm from a flight is normal: half an hour in the shade, then ask again.`,
  ],
  overfull: () => [
    say`Stop the charge now, do not let it go on: it has taken more than it should.`,
    say`Unplug it if it is neither hot nor swollen, put it outdoors on stone, and watch it from a distance.`,
    say`Check the cell count and the type set on the charger. Do not charge it again until you know why.`,
  ],
  cellsHurt: () => [
    say`Do not charge it: its cells are far apart, so one of them is hurt.`,
    say`Retire the pack, or have it looked at by somebody who knows.`,
  ],
  homework: () => [
    say`Do not do that: soldering, opening or shorting a pack has cost fingers and houses.`,
    say`Leave cells and wraps closed; a pack with a hurt lead or cell is handed in, not mended at home.`,
    say`Leads without a pack on them are another matter: solder those, then plug them in.`,
  ],
  bypass: () => [
    say`Do not charge it that way: what was bypassed is what stops a fire.`,
    say`Use the pack with its protection, or hand it in.`,
  ],
  revive: () => [
    say`Do not revive it: a cell that was down that far grows metal inside and can burn on the charger.`,
    say`Measure every cell at rest. Below the damage volts of its kind it is handed in, not tricked awake.`,
  ],
  folkRemedy: () => [
    say`Do not do that: salt water, a lamp, a freezer, pressing or piercing make a bad pack worse.`,
    say`Put it outdoors on stone, tape the plugs, and hand it in where batteries are collected.`,
  ],
  noCharger: () => [
    say`Never connect a pack to a supply, a panel or a battery without a charger: nothing would stop it at full.`,
    say`Use a lithium balance charger set to this pack; the supply feeds the charger.`,
  ],
  wrongCharger: () => [
    say`Do not use that charger: one made for other batteries does not stop where lithium is full.`,
    say`Use a lithium balance charger that has a setting for this type and cell count.`,
  ],
  wrongMode: () => [
    say`Do not charge it in that mode: the type set on the charger must be the one on the label.`,
    say`Set the type that is printed on the pack. If the charger has no such type, use another charger.`,
    say`If it was charged that way already: unplug it, outdoors on stone, and measure every cell.`,
  ],
  wrongCount: () => [
    say`Do not start: the cell count on the charger must be that of the pack, or it overcharges.`,
    say`Count the cells on the label and on the balance plug (one wire more than cells), and set that.`,
  ],
  noBalance: () => [
    say`Do not charge a pack of several cells without its balance lead: one cell can go over full unseen.`,
    say`Plug the balance lead in and charge in balance mode. With a torn lead the pack waits for a new one.`,
  ],
  errorIgnored: () => [
    say`Do not override it: an error, an alarm or a timer that ends the charge is a sign that something is wrong.`,
    say`Unplug, feel the pack, measure every cell, check type and cell count. No cause found: no charge.`,
  ],
  tooFast: () => [
    say`Do not charge it that fast: the large C number on a pack is for flying, not for charging.`,
    say`Charge at 1C unless the label names a charge rate: that is the capacity in Ah as amps.`,
  ],
  keptApart: () => [
    say`Leave it out, do not charge it with the others: after a crash a pack waits apart, outdoors, and is looked at by itself.`,
    say`Watched for half an hour and found sound, ask for it alone.`,
  ],
  boardMixed: () => [
    say`Do not put these on one board: packs that differ drive a great current into each other.`,
    say`One board takes packs of one type, one cell count and nearly the same volts. Charge the others alone.`,
  ],
  reversed: () => [
    say`Unplug it and do not charge it: a pack that was connected the wrong way round may be hurt inside.`,
    say`Put it outdoors on stone for an hour, then look for heat, swelling and melted plugs, and measure every cell.`,
    say`Check the charger and the leads before you use them again.`,
  ],
  crossedLeads: () => [
    say`Do not start: main lead and balance lead must be of the same pack.`,
    say`Unplug both, and connect one pack with both of its leads.`,
  ],
  seriesCharge: () => [
    say`Do not charge packs that are still joined in series, nor on chargers that share a ground with the source.`,
    say`Unplug them from each other and charge each pack by itself.`,
  ],
  badLead: () => [
    say`Do not use that lead: bare, coiled, thin or damaged leads get hot and short.`,
    say`Use whole leads, uncoiled, thick enough for the current; the charger first, then the pack.`,
  ],
  mainsWet: () => [
    say`Do not use mains in the wet: keep supply and plugs dry, and behind a residual-current breaker.`,
    say`Charge under a roof, or from a battery. What got wet is checked by an electrician first.`,
  ],
  unknownPack: () => [
    say`Do not charge a pack of which you do not know the type: the same volts are full for one and a fire for another.`,
    say`Nothing printed, no maker to ask: hand it in where batteries are collected.`,
  ],
  unattended: () => [
    say`Never leave a charge alone, not for a moment, not asleep, not from another room.`,
    say`Stay with it, or stop the charge before you go; if one runs alone now, go and end it.`,
  ],
  movingVehicle: () => [
    say`Never charge in a vehicle that moves, nor sleep beside a charge.`,
    say`Park, take the pack out of the cabin to a bare spot, and stay with it.`,
  ],
  softBed: () => [
    say`Do not charge there: a pack that fails on cloth, foam or carpet sets it alight.`,
    say`Charge on bare stone, tile or metal, a metre from anything that burns.`,
  ],
  burnsNear: () => [
    say`Do not charge there: keep a charge well away from fuel, gas, paper, curtains and other packs.`,
    say`Charge on bare stone or tile with nothing that burns within a metre.`,
  ],
  wayBlocked: () => [
    say`Do not charge there: if it burns, that is your way out.`,
    say`Charge where you can leave without passing it.`,
  ],
  children: () => [
    say`Never leave children or animals alone with it: a charge stays in the hands and the sight of an adult who knows it.`,
    say`Keep children and animals away from it, and have the adult stay until it is unplugged.`,
  ],
  medical: () => [
    say`Do not charge now: whoever watches a charge must be awake and fit to act.`,
    say`Let somebody else do it, or wait until you are.`,
  ],
  exhaust: () => [
    say`Never run an engine or a generator inside a tent, a garage or a closed car: the exhaust kills unseen.`,
    say`Run it outdoors, downwind, far from doors and fuel, and charge away from it.`,
  ],
  hotPlace: () => [
    say`Do not leave them in the heat: full packs in a hot car or in the sun can swell and burn.`,
    say`Take them to the shade, below 30 °C, and bring what does not fly to storage.`,
  ],
  badTransport: () => [
    say`Do not carry or send it like that: damaged packs do not fly or travel with people, and large ones need leave.`,
    say`Sound packs go in the cabin, plugs covered, each in a bag of its own; ask the airline. Damaged ones are fetched or handed in nearby.`,
  ],
  propeller: () => [
    say`Do not charge with a propeller on: first take the pack out of the aircraft, or the propeller off.`,
    say`A motor that starts by itself on the bench cuts to the bone. Charge packs outside the aircraft.`,
  ],
  crashed: () => [
    say`Do not charge it straight after a crash: first outdoors, apart, and watched for half an hour.`,
    say`A dent, a cut, swelling or a cell astray: do not charge it, hand it in. Else charge it at 0.5C at most, and stay beside it.`,
  ],
  tooLow: () => [
    say`Do not charge before every cell is measured at rest: what was run down that far may be past saving.`,
    say`Tell me the volts of its lowest cell; until then it stays off the charger.`,
  ],
  coldPack: () => [
    say`Do not charge it cold, warm the cells to room temperature first: a charge hurts cold cells, and it does not show.`,
    say`Bring it indoors for an hour or two, slowly and without a heater on it.`,
  ],
  storedFull: () => [
    say`Do not charge it before every cell is measured: a pack left full or empty for long may have gone bad.`,
    say`Swollen, a cell astray or below its damage volts: hand it in. From now on store it at storage volts.`,
  ],
  drainsSource: () => [
    say`Stop before the source is low: an engine must still start, a pack must keep its floor.`,
    say`Measure the source, note where to stop, and look at it after each charge.`,
  ],
  leftOnCharger: () => [
    say`Do not leave it connected: a pack is unplugged when it is full, from the charger and from the model.`,
    say`Look at it and feel it, and bring it to storage if it does not fly today or tomorrow.`,
  ],
  sealedBox: () => [
    say`Do not charge in a tight box: gas must be able to get out, or the box bursts.`,
    say`Use a box that cannot burn and is not sealed, and never charge in it with the lid shut.`,
  ],
  loose: () => [
    say`Do not carry or charge it so, cover the plugs first: keys, coins and other packs short a bare plug.`,
    say`Each pack with its plugs covered, in a bag or box of its own.`,
  ],
  disposal: () => [
    say`Never into the bin, the drain or the fire: lithium goes where batteries are collected.`,
    say`Discharge it to storage if it is sound, tape the plugs, and say "damaged" if it is not.`,
  ],
})
