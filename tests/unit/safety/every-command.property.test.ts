// What must hold of every command and every notation, whatever is asked.

import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { type Danger, dangers } from '../../../src/charging/situation/dangers.ts'
import { english } from '../../../src/ground/locale.ts'
import { dangerWords } from '../../../src/handbook/rules/dangers.words.ts'
import { writeQuestion } from '../../../src/language/sentence/question.ts'
import { type Asking, askingOf, member, moderator } from '../../support/ask.ts'
import { cases } from '../../support/cases.ts'
import { expectWithinLimits } from '../../support/every-command/design-limits.ts'
import { type Style, someStyle, usualStyle, writer } from '../../support/every-command/notation.ts'
import { type AskedAs, askedAs, type Options } from '../../support/every-command/questions.ts'
import {
  hazards,
  type Scene,
  savedPacks,
  someScene,
  strictFloor_V,
  strictRate_C,
  strictStorage_V,
} from '../../support/every-command/scene.ts'
import { fakeBoard } from '../../support/fake-noticeboard.ts'
import { folded, shortestTextsOf } from '../../support/rendered-text.ts'
import { allDangers } from '../../support/situations.ts'
import { under } from '../../support/under.ts'

let told: readonly Danger[] = []
let asking: Asking
let askers = 0

const clubs = { plain: 'room:heron-meadow', strict: 'room:long-field' } as const
const at = (club: Scene['club'], by: Occasion): Occasion => ({ ...by, community: { ...by.community, id: clubs[club] } })

beforeAll(async () => {
  asking = await askingOf(
    under(commands, () => ({ dangers: told, doubts: [] })),
    { noticeboard: fakeBoard().noticeboard, clock: () => new Date('2031-05-04T10:00:00Z') },
  )
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
})

afterAll(async () => {
  await asking.memory.close()
})

async function done(question: string, club: Scene['club']): Promise<void> {
  const { problem, fault } = await asking.ask(question, at(club, moderator))
  expect({ question, problem, fault }).toEqual({ question, problem: undefined, fault: undefined })
}

const entries = Object.entries(askedAs)
const asked = entries.filter((entry): entry is [string, AskedAs] => 'weight' in entry[1])
const someCommand = fc.oneof(...asked.map(([command, { weight }]) => ({ weight, arbitrary: fc.constant(command) })))

/** Undefined where the command cannot be asked that. */
async function answered(
  command: string,
  scene: Scene,
  style: Style,
  dangersTold: readonly Danger[] = [],
): Promise<Reply | undefined> {
  const { options, around } = askedAs[command] as AskedAs
  const write = writer(style)
  const given = options(scene, write)
  if (!given) return undefined
  const [before, after] = around?.(scene, write) ?? []
  if (before !== undefined) await done(before, scene.club)
  const question = { command, options: withoutUnset(given) }
  const occasion = at(scene.club, { ...member, asker: { ...member.asker, id: `room:${askers++}` } })
  told = dangersTold
  const reply = await asking.assistant.answer(style.apart ? question : writeQuestion(question), occasion)
  told = []
  if (after !== undefined) await done(after, scene.club)
  expect(asking.faults).toEqual([])
  if (command === 'remind me' && reply.problem?.what.startsWith('I do not remind anybody in')) return undefined
  if (reply.problem) throw new Error(`${writeQuestion(question)}: ${reply.problem.what}`)
  return reply
}

const withoutUnset = (options: Options): Record<string, string> =>
  Object.fromEntries(Object.entries(options).filter((pair): pair is [string, string] => pair[1] !== undefined))

const rank = ({ verdict }: Pick<Reply, 'verdict'>): number =>
  verdict === 'do not charge' ? 2 : verdict === 'go with care' ? 1 : 0

it('every command is in the table', () => {
  expect(Object.keys(askedAs).toSorted()).toEqual(commands.map(({ name }) => name).toSorted())
})

describe('whatever is asked', () => {
  it('the same in any notation is judged the same, within every limit of the design', async () => {
    await fc.assert(
      fc.asyncProperty(someCommand, someScene, someStyle, async (command, scene, style) => {
        const usual = await answered(command, scene, usualStyle)
        const other = await answered(command, scene, style)
        expect(other?.command).toBe(usual?.command)
        if (!usual || !other) return
        const asked = `${usual.question}\n${other.question}`
        if (isLonger(usual, other)) {
          // Volts tell less of the charge than a percentage does, so the long end of its time is later.
          expect(scene.stand?.kind, asked).not.toBe('volts')
          expect(rank(other), asked).toBeGreaterThanOrEqual(rank(usual))
        } else expect(other.verdict, asked).toBe(usual.verdict)
        expect(keysOf(other).filter(isNotOfHours), asked).toEqual(keysOf(usual).filter(isNotOfHours))
        expectWithinLimits(usual, scene)
        expectWithinLimits(other, scene)
      }),
      cases(4_000),
    )
  })

  it('a hazard more never makes the answer kinder', async () => {
    await fc.assert(
      fc.asyncProperty(
        someCommand,
        someScene,
        someStyle,
        fc.constantFrom(...hazards),
        async (command, scene, style, { worse, onlyWhere }) => {
          const before = await answered(command, scene, style)
          const after = await answered(command, worse(scene), style)
          if (before && after && onlyWhere?.(command, scene) !== false)
            expect(rank(after), `${before.question}\n${after.question}`).toBeGreaterThanOrEqual(rank(before))
          if (after) expectWithinLimits(after, worse(scene))
        },
      ),
      cases(3_000),
    )
  })

  it('a danger more never makes the answer kinder, and each is said on every surface', async () => {
    await fc.assert(
      fc.asyncProperty(
        someCommand,
        someScene,
        someStyle,
        fc.subarray(allDangers, { maxLength: 2 }),
        fc.constantFrom(...allDangers),
        async (command, scene, style, some, more) => {
          const before = await answered(command, scene, style, some)
          const all = [...new Set([...some, more])]
          const after = await answered(command, scene, style, all)
          if (!before || !after) return
          expect(rank(after), after.question).toBeGreaterThanOrEqual(
            Math.max(rank(before), dangers[more].weight === 'refuse' ? 2 : 1),
          )
          expectWithinLimits(after, scene)
          expectSaid(after, all)
        },
      ),
      cases(3_000),
    )
  })
})

describe('an answer that deals with no battery', () => {
  const others = entries.filter(([, one]) => 'because' in one).map(([command]) => command)

  it.each(others)('is none where the words tell of danger: %s', async command => {
    const question = commands.find(({ name }) => name === command)?.examples[0] ?? command
    for (const danger of allDangers) {
      told = [danger]
      const reply = await asking.ask(question, at('strict', member))
      told = []
      expect(asking.faults).toEqual([])
      // Nothing of that name is saved.
      if (reply.problem) continue
      const isRefused = dangers[danger].weight === 'refuse'
      expect(reply.verdict, danger).toBe(isRefused ? 'do not charge' : 'go with care')
      expectSaid(reply, [danger])
    }
  })
})

const keysOf = ({ cautions }: Reply) => cautions.map(({ key }) => key)

const hours: readonly (string | undefined)[] = [undefined, 'long', 'veryLong']
const isNotOfHours = (key: string) => !hours.includes(key)
const hoursOf = (reply: Reply) => hours.indexOf(keysOf(reply).find(key => hours.includes(key)))
const isLonger = (one: Reply, other: Reply): boolean => hoursOf(other) > hoursOf(one)

const locale = english('.')
const lines = dangerWords(locale) as unknown as Readonly<Record<Danger, () => readonly string[]>>

/** What must be said stands whole in what each surface shows in its shortest view. */
function expectSaid(reply: Reply, toldOf: readonly Danger[]): void {
  const must = [
    reply.headline,
    ...reply.cautions.filter(({ must }) => must).map(({ text }) => text),
    ...toldOf.flatMap(danger =>
      // Of a refusal that is no longer the first reason, that it is one.
      reply.verdict === 'do not charge' ? lines[danger]().slice(0, 1) : lines[danger](),
    ),
  ].map(folded)
  for (const [surface, text] of Object.entries(shortestTextsOf(reply)))
    for (const one of must) expect(text, surface).toContain(one)
}
