// What the lesson on retiring a pack says.

import type { Provenance } from '../../charging/setting/limit.ts'
import type { Condition } from '../../charging/upkeep/age-signs.ts'
import type { Text } from '../../ground/text.ts'
import { writePack } from '../../language/things/pack.ts'
import type { WordsOf } from '../teaching/lesson.ts'
import type { BadWay, Charging, GoodWay, retire } from './retire.ts'

export const retireWords: WordsOf<typeof retire> = ({ say, show, own }) => {
  const conditions: Readonly<Record<Condition, Text>> = {
    healthy: say`it is healthy: go on`,
    ageing: say`it is ageing: gentle use`,
    retire: say`retire it`,
  }
  const chargings: Readonly<Record<Charging, Text>> = {
    usual: say`charge it as usual`,
    careful: say`charge it with care, and watch every cell`,
    gone: say`retire it`,
  }
  const ways: Readonly<Record<GoodWay | BadWay, Text>> = {
    'hand in': say`discharge it with the charger, cover its plugs, hand it in`,
    tape: say`discharge it, tape the plugs, take it to where batteries are collected`,
    rubbish: say`cut the lead off and put it into the household rubbish`,
    pierce: say`pierce it outdoors, so that it is safe`,
    burn: say`burn it in the open, far from people`,
    spare: say`keep it full in the drawer, as a spare`,
    'paper bin': say`put it into the paper bin without its plug`,
  }
  const cited = ({ standing, source }: Provenance) => own(`${standing}: ${source}`)
  return {
    title: say`When to retire a pack, and how to dispose of it`,
    teach: ({ chemistry, damage_V, ageing, retire: least }) => [
      say`Retire a pack that is swollen, hurt or has grown hot, one with a cell that rested below ${show.perCell(damage_V)} (${own(chemistry.name)}), and one that holds less than ${show.percent(least)} of what it did. Below ${show.percent(ageing)} it is ageing. The shares are common practice.`,
      say`Three times the resistance of when it was new retires it as well; "log charge" and "log show" keep count of both for a pack that you have saved.`,
      say`Discharge a sound old pack with the charger, cover its plugs, and hand it in where batteries are taken back: never into the household rubbish, and never cut, pierced or burned.`,
      say`A pack that is hurt is not charged or discharged: outdoors with it, away from anything that burns, and ask the collection point how it wants it brought.`,
    ],
    example: ({ pack, first_Ah, now_Ah, left, condition }) =>
      say`A ${own(writePack(pack))} took ${show.capacity(first_Ah)} from empty when new and takes ${show.capacity(now_Ah)} now: ${show.percent(left)}, so ${conditions[condition]}.`,
    questions: {
      capacity: ({ first_Ah, now_Ah, right, from }) => ({
        ask: say`A pack took ${show.capacity(first_Ah)} from empty to full when new, and takes ${show.capacity(now_Ah)} now. What does that say?`,
        choice: one => conditions[one],
        why: say`${show.capacity(now_Ah)} ÷ ${show.capacity(first_Ah)} = ${show.percent(now_Ah / first_Ah)}: ${conditions[right]} (${cited(from)}).`,
      }),
      low: ({ chemistry, rest_V, damage_V, floor_V, right }) => {
        const why: Readonly<Record<Charging, Text>> = {
          gone: say`${show.perCell(rest_V)} is below ${show.perCell(damage_V)}: such a cell may short and burn when it is charged.`,
          careful: say`${show.perCell(rest_V)} is below the floor of ${show.perCell(floor_V)} but not damaged: begin gently, and stop if a cell lags or grows warm.`,
          usual: say`${show.perCell(rest_V)} is above the floor of ${show.perCell(floor_V)}.`,
        }
        return {
          ask: say`The lowest cell of a ${own(chemistry.name)} pack rests at ${show.perCell(rest_V)}; cells of this kind are flown to ${show.perCell(floor_V)} and count as damaged below ${show.perCell(damage_V)}. What do you do?`,
          choice: one => chargings[one],
          why: why[right],
        }
      },
      dispose: ({ right }) => ({
        ask: say`A sound but worn-out pack is to go. What do you do with it?`,
        choice: one => ways[one],
        why: say`An old pack still holds enough to burn: ${ways[right]}. The local rules say where.`,
      }),
    },
  }
}
