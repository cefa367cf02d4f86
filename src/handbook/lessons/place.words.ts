// What the lesson on where to charge says.

import { joined, type Text } from '../../ground/text.ts'
import { writePack } from '../../language/things/pack.ts'
import type { WordsOf } from '../teaching/lesson.ts'
import { type BadPlace, type Doing, type GoodPlace, least_A, type Mark, type place, warmth } from './place.ts'

export const placeWords: WordsOf<typeof place> = ({ say, show, own }) => {
  const span = say`${show.temperature(warmth.from_C)} to ${show.temperature(warmth.to_C)}`
  const doing: Readonly<Record<Doing, Text>> = {
    charge: say`charge it`,
    wait: say`bring it to the temperature of the room first`,
    never: say`do not charge it at all`,
  }
  const marks: Readonly<Record<Mark, Text>> = {
    sound: say`flat and dry, without a mark`,
    swollen: say`a little swollen`,
    punctured: say`punctured at a corner`,
    dented: say`dented at one edge`,
    leaking: say`leaking something sweet`,
  }
  const places: Readonly<Record<GoodPlace | BadPlace, Text>> = {
    concrete: say`on a concrete floor, with you beside it`,
    stone: say`on a stone slab outdoors in the shade, in sight`,
    tray: say`in an open metal tray on tiles, with you in the room`,
    'car seat': say`on the seat of the car while you drive`,
    carpet: say`on the carpet of the living room`,
    bed: say`beside the bed, overnight`,
    fuel: say`on the bench next to the fuel can`,
    case: say`in the case with the other packs`,
    roof: say`in the full sun on the roof of the car`,
    shopping: say`in the workshop while you shop for groceries`,
  }
  return {
    title: say`Where and how to charge, and what never to do`,
    teach: ({ from_C, to_C, cold }) => [
      say`Stay with a pack until its charge has ended, on a surface that cannot burn, away from anything that can, with a way out behind you and not behind the pack.`,
      say`Never charge a pack that is swollen, dented, punctured, leaking or hot. Never charge in a moving vehicle, overnight, or out of sight.`,
      say`Cells take a charge between ${show.temperature(from_C)} and ${show.temperature(to_C)}, ${joined(
        cold.map(band => say`below ${show.temperature(band.to_C)} at ${show.rate(band.maxRate_C)} at most`),
        ', ',
      )}. Let a pack that has just flown cool first.`,
      say`If a pack smokes, hisses or burns: away from it and its smoke, everybody out, call the fire service. Do not pick it up or unplug it unless that is safe.`,
    ],
    example: ({ pack, energy_Wh, cold_C, cold, warm }) => {
      const held = say`A full ${own(writePack(pack))} holds ${show.energy(energy_Wh)}, and much of that comes out as fire if a cell fails.`
      if (!cold || !warm) return held
      return say`${held} At ${show.temperature(cold_C)} it is charged with ${show.current(cold.current_A)}, in the room with ${show.current(warm.current_A)}.`
    },
    questions: {
      fit: ({ pack, mark, temperature_C, rest_V, right }) => {
        const { name, damage_V } = pack.chemistry
        const why: Readonly<Record<Doing, Text>> = {
          never: say`A pack that is hurt, or whose cells rest below ${show.perCell(damage_V.value)}, is never charged: put it outdoors, away from anything that burns, and hand it in.`,
          wait: say`${show.temperature(temperature_C)} is outside the ${span} at which cells take a charge: let it come to the temperature of the room by itself, without a heater.`,
          charge: say`It looks sound, and neither its volts nor its temperature speak against it. Stay with it all the same.`,
        }
        return {
          ask: say`You find a ${own(`${pack.series}S`)} ${own(name)} pack in your bag. It is ${marks[mark]}, its cells are at ${show.temperature(temperature_C)} and rest at ${show.perCell(rest_V)}. What do you do?`,
          choice: one => doing[one],
          why: why[right],
        }
      },
      where: ({ right }) => ({
        ask: say`Where do you charge?`,
        choice: one => places[one],
        why: say`Nothing there can burn, and somebody is with it: ${places[right]}.`,
      }),
      cold: ({ pack, temperature_C, wantedRate_C, wanted_A, value }) => ({
        ask: say`The cells of a ${own(writePack(pack))} are at ${show.temperature(temperature_C)} and you cannot warm them. With which current do you charge it here?`,
        wanted: say`amps, within ${show.percent(0.03)} or ${show.current(least_A)}`,
        why: say`At ${show.temperature(temperature_C)} ${show.rate(wantedRate_C)} is wanted, × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.current(wanted_A)}, and no limit may be passed: ${show.current(value)}.`,
      }),
    },
  }
}
