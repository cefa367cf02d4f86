// Lesson: where and how to charge, and what never to do.

import { whyUnfit } from '../../charging/setting/fitness.ts'
import { adviseSetting } from '../../charging/setting/old-setting.ts'
import { lipo } from '../../charging/things/chemistries.ts'
import { labelEnergy_Wh } from '../../charging/upkeep/transport.ts'
import { readCurrent, writeCurrent } from '../../language/quantities/quantities.ts'
import { unsoundWord } from '../../language/sentence/danger-words.ts'
import { writePack } from '../../language/things/pack.ts'
import { askChoice, askQuantity } from './asking.ts'
import type { Draw } from './draw.ts'
import { drawnCapacity_Ah, packOf } from './drawn.ts'
import type { Lesson } from './lesson.ts'

const large = packOf({ chemistry: lipo, series: 6, capacity_Ah: 1.3 })

const charge = 'charge it'
const wait = 'bring it to the temperature of the room first'
const never = 'do not charge it at all'

const goodPlaces = [
  'on a concrete floor, with you beside it',
  'on a stone slab outdoors in the shade, in sight',
  'in an open metal tray on tiles, with you in the room',
] as const
const badPlaces = [
  'on the seat of the car while you drive',
  'on the carpet of the living room',
  'beside the bed, overnight',
  'on the bench next to the fuel can',
  'in the case with the other packs',
  'in the full sun on the roof of the car',
  'in the workshop while you shop for groceries',
] as const

export const place: Lesson = {
  key: 'place',
  title: 'Where and how to charge, and what never to do',
  concerns: { temperature_C: 5 },
  teach: ({ show }) => [
    'Stay with a pack until its charge has ended, on a surface that cannot burn, away from anything that can, with a way out behind you and not behind the pack.',
    'Never charge a pack that is swollen, dented, punctured, leaking or hot. Never charge in a moving vehicle, overnight, or out of sight.',
    `Cells take a charge between ${show.temperature(window_C.from)} and ${show.temperature(window_C.to)}, and below ${show.temperature(coldTo_C)} only half the current. Let a pack that has just flown cool first.`,
    'If a pack smokes, hisses or burns: away from it and its smoke, everybody out, call the fire service. Do not pick it up or unplug it unless that is safe.',
  ],
  example: ({ house, show }) => {
    const cold = adviseSetting({ pack: large, temperature_C: 5, limits: house })
    const warm = adviseSetting({ pack: large, limits: house })
    const held = `A full ${writePack(large)} holds ${show.energy(labelEnergy_Wh(large))}, and much of that comes out as fire if a cell fails.`
    if ('refusal' in cold || 'refusal' in warm) return held
    return `${held} At ${show.temperature(5)} it is charged with ${show.current(cold.current_A)}, in the room with ${show.current(warm.current_A)}.`
  },
  questions: [
    {
      key: 'fit',
      draw: (draw, { house, show }) => {
        const pack = packOf({
          chemistry: lipo,
          series: draw.int(2, 6),
          capacity_Ah: drawnCapacity_Ah(draw),
        })
        const found = drawnFinding(draw)
        const { words, temperature_C, rest_V } = found
        const described = `It is ${words}, its cells are at ${show.temperature(temperature_C)} and rest at ${show.perCell(rest_V)}.`
        const isHurt = unsoundWord(described) !== undefined || whyUnfit({ pack, restPerCell_V: rest_V })
        const isOutside = 'refusal' in adviseSetting({ pack, temperature_C, limits: house })
        return askChoice(draw, {
          ask: `You find a ${pack.series}S LiPo pack in your bag. ${described} What do you do?`,
          choices: [charge, wait, never],
          right: isHurt ? never : isOutside ? wait : charge,
          why: isHurt
            ? `A pack that is hurt, or whose cells rest below ${show.perCell(lipo.damage_V.value)}, is never charged: put it outdoors, away from anything that burns, and hand it in.`
            : isOutside
              ? `${show.temperature(temperature_C)} is outside the ${show.temperature(window_C.from)} to ${show.temperature(window_C.to)} at which cells take a charge: let it come to the temperature of the room by itself, without a heater.`
              : 'It looks sound, and neither its volts nor its temperature speak against it. Stay with it all the same.',
        })
      },
    },
    {
      key: 'where',
      draw: draw => {
        const right = draw.pick(goodPlaces)
        const [one, two, three] = draw.shuffled(badPlaces)
        return askChoice(draw, {
          ask: 'Where do you charge?',
          choices: [right, one as string, two as string, three as string],
          right,
          why: `Nothing there can burn, and somebody is with it: ${right}.`,
        })
      },
    },
    {
      key: 'cold',
      draw: (draw, { house, show }) => {
        const pack = packOf({
          chemistry: lipo,
          series: draw.int(2, 6),
          capacity_Ah: drawnCapacity_Ah(draw),
        })
        const temperature_C = draw.int(1, 9)
        const setting = adviseSetting({ pack, temperature_C, limits: house })
        if ('refusal' in setting) throw new RangeError('a sound pack is refused in the cold')
        const { current_A, wantedRate_C } = setting
        return askQuantity({
          ask: `The cells of a ${writePack(pack)} are at ${show.temperature(temperature_C)} and you cannot warm them. With which current do you charge it here?`,
          value: current_A,
          tolerance: Math.max(0.01, 0.03 * current_A),
          wanted: 'amps, within 3 % or 0.01 A',
          read: readCurrent,
          write: writeCurrent,
          why: `Below ${show.temperature(coldTo_C)} half the usual rate is wanted, ${show.rate(wantedRate_C)} × ${show.number(pack.capacity_Ah, 3)} Ah = ${show.current(setting.wanted_A)}, and no limit may be passed: ${show.current(current_A)}.`,
        })
      },
    },
  ],
}

const bands = lipo.temperatureBands.value
const window_C = { from: bands[0]?.from_C ?? 0, to: bands.at(-1)?.to_C ?? 0 }
const coldTo_C = bands[0]?.to_C ?? 0

/** As often sound as hurt, and sometimes too cold or too hot. */
function drawnFinding(draw: Draw): { words: string; temperature_C: number; rest_V: number } {
  const sound = { words: 'flat and dry, without a mark', temperature_C: draw.int(12, 38), rest_V: 3.82 }
  switch (draw.int(0, 4)) {
    case 0:
      return {
        ...sound,
        words: draw.pick([
          'a little swollen',
          'punctured at a corner',
          'dented at one edge',
          'leaking something sweet',
        ]),
      }
    case 1:
      return { ...sound, rest_V: draw.int(120, 235) / 100 }
    case 2:
      return { ...sound, temperature_C: draw.pick([-8, -4, 50, 55, 60]) }
    default:
      return { ...sound, rest_V: draw.int(370, 410) / 100 }
  }
}
