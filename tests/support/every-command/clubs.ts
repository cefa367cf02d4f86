// Two clubs with a kit, one without rules of its own and one that is stricter in all, and whoever asks there.

import { expect } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import type { Danger } from '../../../src/charging/situation/dangers.ts'
import { writeQuestion } from '../../../src/language/sentence/question.ts'
import { askingOf, member, moderator } from '../ask.ts'
import { fakeBoard } from '../fake-noticeboard.ts'
import { under } from '../under.ts'
import { type Style, usualStyle, writer } from './notation.ts'
import { type AskedAs, askedAs, type Options } from './questions.ts'
import { type Scene, savedPacks, strictFloor_V, strictRate_C, strictStorage_V } from './scene.ts'

const clubs = { plain: 'room:heron-meadow', strict: 'room:long-field' } as const

export interface Clubs {
  /** Undefined where the command cannot be asked that. Fails the test where it is not understood, and on any fault. */
  answered(command: string, scene: Scene, style: Style, dangers?: readonly Danger[]): Promise<Reply | undefined>
  /** A member of the strict club asks in words around which a danger is told. */
  warned(question: string, danger: Danger): Promise<Reply>
  close(): Promise<void>
}

export async function openClubs(): Promise<Clubs> {
  let told: readonly Danger[] = []
  let askers = 0
  const asking = await askingOf(
    under(commands, () => ({ dangers: told, doubts: [] })),
    { noticeboard: fakeBoard().noticeboard, clock: () => new Date('2031-05-04T10:00:00Z') },
  )
  await stock()

  async function done(question: string, club: Scene['club']): Promise<void> {
    const { problem, fault } = await asking.ask(question, at(club, moderator))
    expect({ question, problem, fault }).toEqual({ question, problem: undefined, fault: undefined })
  }

  async function stock(): Promise<void> {
    const write = writer(usualStyle)
    for (const club of ['plain', 'strict'] as const) {
      for (const pack of savedPacks) {
        await done(`kit save name: ${pack.name} pack: ${write.pack(pack)} for: club`, club)
        await done(`kit save name: log ${pack.name} pack: ${write.pack(pack)} for: club`, club)
      }
    }
    await done(`house set rate: ${strictRate_C}C gentle: yes`, 'strict')
    for (const [chemistry, storage_V] of Object.entries(strictStorage_V)) {
      const floor_V = strictFloor_V[chemistry]
      await done(`house set chemistry: ${chemistry} storage: ${storage_V}V floor: ${floor_V}V`, 'strict')
    }
  }

  return {
    answered: async (command, scene, style, dangers = []) => {
      const { options, around } = askedAs[command] as AskedAs
      const write = writer(style)
      const given = options(scene, write)
      if (!given) return undefined
      const [before, after] = around?.(scene, write) ?? []
      if (before !== undefined) await done(before, scene.club)
      // Also with the question: nothing that was asked before without it may be handed out again.
      const question = { command, options: withoutUnset(given), told: dangers.length > 0 ? dangers : undefined }
      const occasion = at(scene.club, { ...member, asker: { ...member.asker, id: `room:${askers++}` } })
      told = dangers
      const reply = await asking.assistant.answer(
        style.apart ? question : writeQuestion({ ...question, told: [] }),
        occasion,
      )
      told = []
      if (after !== undefined) await done(after, scene.club)
      expect(asking.faults).toEqual([])
      if (command === 'remind me' && reply.problem?.what.startsWith('I do not remind anybody in')) return undefined
      if (reply.problem) throw new Error(`${writeQuestion(question)}: ${reply.problem.what}`)
      return reply
    },
    warned: async (question, danger) => {
      told = [danger]
      const reply = await asking.ask(question, at('strict', member))
      told = []
      expect(asking.faults).toEqual([])
      return reply
    },
    close: () => asking.memory.close(),
  }
}

const at = (club: Scene['club'], by: Occasion): Occasion => ({ ...by, community: { ...by.community, id: clubs[club] } })

const withoutUnset = (options: Options): Record<string, string> =>
  Object.fromEntries(Object.entries(options).filter((pair): pair is [string, string] => pair[1] !== undefined))
