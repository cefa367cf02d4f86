// Lesson: where and how to charge, and what never to do.

import type { RuleKey } from '../../charging/envelope/judge.ts'
import type { Danger } from '../../charging/situation/dangers.ts'
import { lipo } from '../../charging/things/chemistries.ts'
import { labelEnergy_Wh } from '../../charging/upkeep/transport.ts'
import { joined } from '../../ground/text.ts'
import { writePack } from '../../language/things/pack.ts'
import { type Draw, drawnCapacity_Ah, judged, packOf, settingOf } from '../teaching/draw.ts'
import { lesson } from '../teaching/lesson.ts'

const large = packOf({ chemistry: lipo, series: 6, capacity_Ah: 1.3 })
const coldExample_C = 5
/** So near an answer need only be, in A. */
const least_A = 0.01
/** What can be seen of a pack, and the danger that it tells. */
const marks = {
  swollen: 'swollen',
  punctured: 'pierced',
  dented: 'pierced',
  leaking: 'pierced',
} as const satisfies Readonly<Record<string, Danger>>
/** What passes when the pack comes to the temperature of the room. */
const passing: readonly RuleKey[] = ['tooCold', 'tooHot']
/** Where cells take a charge, and how fast in the cold. */
const bands = lipo.temperatureBands.value
const coldest_C = Math.min(...bands.map(({ from_C }) => from_C))
const hottest_C = Math.max(...bands.map(({ to_C }) => to_C))

export const place = lesson('place', ({ say, show, own }, house) => {
  const span = say`${show.temperature(coldest_C)} to ${show.temperature(hottest_C)}`
  const doing = {
    charge: say`charge it`,
    wait: say`bring it to the temperature of the room first`,
    never: say`do not charge it at all`,
  }
  const seen = {
    sound: say`flat and dry, without a mark`,
    swollen: say`a little swollen`,
    punctured: say`punctured at a corner`,
    dented: say`dented at one edge`,
    leaking: say`leaking something sweet`,
  }
  return {
    title: say`Where and how to charge, and what never to do`,
    teach: [
      say`Stay with a pack until its charge has ended, on a surface that cannot burn, away from anything that can, with a way out behind you and not behind the pack.`,
      say`Never charge a pack that is swollen, dented, punctured, leaking or hot. Never charge in a moving vehicle, overnight, or out of sight.`,
      say`Cells take a charge between ${show.temperature(coldest_C)} and ${show.temperature(hottest_C)}, ${joined(
        bands
          .slice(0, -1)
          .map(band => say`below ${show.temperature(band.to_C)} at ${show.rate(band.maxRate_C)} at most`),
        ', ',
      )}. Let a pack that has just flown cool first.`,
      say`If a pack smokes, hisses or burns: away from it and its smoke, everybody out, call the fire service. Do not pick it up or unplug it unless that is safe.`,
    ],
    example: () => {
      const held = say`A full ${own(writePack(large))} holds ${show.energy(labelEnergy_Wh(large))}, and much of that comes out as fire if a cell fails.`
      const cold = settingOf({ pack: large, temperature_C: coldExample_C }, house)
      const warm = settingOf({ pack: large }, house)
      if (!cold || !warm) return held
      return say`${held} At ${show.temperature(coldExample_C)} it is charged with ${show.current(cold.current_A)}, in the room with ${show.current(warm.current_A)}.`
    },
    questions: {
      fit: draw => {
        const pack = drawnLipo(draw)
        const { mark, temperature_C, rest_V } = drawnFinding(draw)
        const from = { kind: 'rest' as const, perCell_V: rest_V }
        const dangers = mark === 'sound' ? [] : [marks[mark]]
        const judgement = judged({ act: 'charge', pack, from, temperature_C, dangers }, house)
        const refused = judgement.found.filter(({ weight }) => weight === 'refuse').map(({ key }) => key)
        const right = refused.length === 0 ? 'charge' : refused.every(key => passing.includes(key)) ? 'wait' : 'never'
        const { name, damage_V } = pack.chemistry
        const why = {
          never: say`A pack that is hurt, or whose cells rest below ${show.perCell(damage_V.value)}, is never charged: put it outdoors, away from anything that burns, and hand it in.`,
          wait: say`${show.temperature(temperature_C)} is outside the ${span} at which cells take a charge: let it come to the temperature of the room by itself, without a heater.`,
          charge: say`It looks sound, and neither its volts nor its temperature speak against it. Stay with it all the same.`,
        }
        return {
          ask: say`You find a ${own(`${pack.series}S`)} ${own(name)} pack in your bag. It is ${seen[mark]}, its cells are at ${show.temperature(temperature_C)} and rest at ${show.perCell(rest_V)}. What do you do?`,
          choices: draw.shuffled(Object.values(doing)),
          right: doing[right],
          why: why[right],
        }
      },
      where: draw => {
        const right = draw.pick([
          say`on a concrete floor, with you beside it`,
          say`on a stone slab outdoors in the shade, in sight`,
          say`in an open metal tray on tiles, with you in the room`,
        ])
        const wrong = draw.shuffled([
          say`on the seat of the car while you drive`,
          say`on the carpet of the living room`,
          say`beside the bed, overnight`,
          say`on the bench next to the fuel can`,
          say`in the case with the other packs`,
          say`in the full sun on the roof of the car`,
          say`in the workshop while you shop for groceries`,
        ])
        return {
          ask: say`Where do you charge?`,
          choices: draw.shuffled([right, ...wrong.slice(0, 3)]),
          right,
          why: say`Nothing there can burn, and somebody is with it: ${right}.`,
        }
      },
      cold: draw => {
        const pack = drawnLipo(draw)
        // A club may charge no cells as cold as that.
        const temperature_C = Math.max(draw.int(1, 9), house.coldest_C ?? 1)
        const setting = settingOf({ pack, temperature_C }, house)
        if (!setting) throw new RangeError('a sound pack is refused in the cold')
        const { current_A: value, wantedRate_C, wanted_A } = setting
        return {
          ask: say`The cells of a ${own(writePack(pack))} are at ${show.temperature(temperature_C)} and you cannot warm them. With which current do you charge it here?`,
          wanted: say`amps, within ${show.percent(0.03)} or ${show.current(least_A)}`,
          why: say`At ${show.temperature(temperature_C)} ${show.rate(wantedRate_C)} is wanted, × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.current(wanted_A)}, and no limit may be passed: ${show.current(value)}.`,
          quantity: 'current',
          value,
          tolerance: Math.max(least_A, 0.03 * value),
        }
      },
    },
  }
})

const drawnLipo = (draw: Draw) =>
  packOf({ chemistry: lipo, series: draw.int(2, 6), capacity_Ah: drawnCapacity_Ah(draw) })

interface Finding {
  readonly mark: keyof typeof marks | 'sound'
  readonly temperature_C: number
  readonly rest_V: number
}

/** As often sound as hurt, and sometimes too cold or too hot. */
function drawnFinding(draw: Draw): Finding {
  const sound: Finding = { mark: 'sound', temperature_C: draw.int(12, 38), rest_V: 3.82 }
  switch (draw.int(0, 4)) {
    case 0:
      return { ...sound, mark: draw.pick(['swollen', 'punctured', 'dented', 'leaking']) }
    case 1:
      return { ...sound, rest_V: draw.int(120, 235) / 100 }
    case 2:
      return { ...sound, temperature_C: draw.pick([-8, -4, 50, 55, 60]) }
    default:
      return { ...sound, rest_V: draw.int(370, 410) / 100 }
  }
}
