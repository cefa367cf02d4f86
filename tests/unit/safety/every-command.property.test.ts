// What must hold of every command and every notation, whatever is asked.

import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { openLayer } from '../../../src/assistant/layers/opened.ts'
import type { Reply } from '../../../src/assistant/reply.ts'
import { type Danger, dangers, emergencies } from '../../../src/charging/situation/dangers.ts'
import { socAt } from '../../../src/charging/things/curve.ts'
import { english } from '../../../src/ground/locale.ts'
import { dangerWords } from '../../../src/handbook/rules/dangers.words.ts'
import { cases } from '../../support/cases.ts'
import { type Clubs, openClubs } from '../../support/every-command/clubs.ts'
import { expectWithinLimits } from '../../support/every-command/design-limits.ts'
import { someStyle, usualStyle, writer } from '../../support/every-command/notation.ts'
import { type AskedAs, askedAs } from '../../support/every-command/questions.ts'
import { hazards, type Scene, someScene } from '../../support/every-command/scene.ts'
import { folded, shortestTextsOf } from '../../support/rendered-text.ts'
import { allDangers } from '../../support/situations.ts'

let clubs: Clubs
beforeAll(async () => {
  clubs = await openClubs()
})
afterAll(() => clubs.close())
const answered: Clubs['answered'] = (...asked) => clubs.answered(...asked)

const entries = Object.entries(askedAs)
const asked = entries.filter((entry): entry is [string, AskedAs] => 'weight' in entry[1])
const someCommand = fc.oneof(...asked.map(([command, { weight }]) => ({ weight, arbitrary: fc.constant(command) })))

/** Packs that are full are ready without a charge, whatever would feed it. */
function isReady(command: string, { stand, pack }: Scene): boolean {
  if (command !== 'plan' || !stand) return false
  if (stand.kind === 'word') return stand.word === 'full'
  return (stand.kind === 'share' ? stand.percent / 100 : socAt(pack.chemistry, stand.perCell_V)) > 0.97
}

const isToldOf = (command: string, scene: Scene, worse: Scene): boolean => {
  if (isReady(command, worse)) return false
  const { options, around } = askedAs[command] as AskedAs
  const asked = (one: Scene) => JSON.stringify([options(one, plain), around?.(one, plain)])
  return asked(scene) !== asked(worse)
}
const plain = writer(usualStyle)

const rank = ({ verdict }: Pick<Reply, 'verdict'>): number =>
  verdict === 'do not charge' ? 2 : verdict === 'go with care' ? 1 : 0

describe('whatever is asked', () => {
  it('the same in any notation is judged the same, within every limit of the design', async () => {
    await fc.assert(
      fc.asyncProperty(someCommand, someScene, someStyle, async (command, scene, style) => {
        const usual = await answered(command, scene, usualStyle)
        const other = await answered(command, scene, style)
        // By the volts the long end of a charge may be later than any reminder.
        if (!usual || !other) return
        expect(other.command).toBe(usual.command)
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
        async (command, scene, style, { worse, onlyWhere, refused }) => {
          const before = await answered(command, scene, style)
          const after = await answered(command, worse(scene), style)
          if (!after) return
          expectWithinLimits(after, worse(scene))
          if (onlyWhere?.(command, scene) === false) return
          if (before) expect(rank(after), `${before.question}\n${after.question}`).toBeGreaterThanOrEqual(rank(before))
          // Where it changes what is asked, the command is told of it.
          if (refused && isToldOf(command, scene, worse(scene)))
            expect(after.verdict, after.question).toBe('do not charge')
        },
      ),
      cases(3_000),
    )
  })

  it('one charge is judged the same by whichever command', async () => {
    await fc.assert(
      fc.asyncProperty(someScene, someStyle, async (asked, style) => {
        const scene = { ...asked, rate_C: undefined, charged: undefined }
        const set = await answered('current', scene, style)
        const timed = await answered('time', scene, style)
        expect(timed?.verdict, set?.question).toBe(set?.verdict)
        if (!scene.source || !set || !timed) return
        const fed = await answered('source', scene, style)
        expect(rank(fed as Reply), fed?.question).toBeGreaterThanOrEqual(rank(set))
      }),
      cases(400),
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
      const reply = await clubs.warned(question, danger)
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
function expectSaid(reply: Reply, told: readonly Danger[]): void {
  // In an emergency all else stands in the care.
  const urgent = told.filter(danger => emergencies.includes(danger))
  const toldOf = urgent.length > 0 ? urgent : told
  const care = openLayer(reply, 'care').lines.map(folded).join('\n')
  for (const danger of told)
    if (!toldOf.includes(danger)) expect(care, danger).toContain(folded(lines[danger]()[0] ?? '?'))
  const must = [
    ...reply.lines,
    ...reply.cautions.filter(({ must }) => must).map(({ text }) => text),
    ...toldOf.flatMap(danger =>
      // Of a refusal that is no longer the first reason, that it is one.
      reply.verdict === 'do not charge' ? lines[danger]().slice(0, 1) : lines[danger](),
    ),
  ].map(folded)
  for (const [surface, text] of Object.entries(shortestTextsOf(reply)))
    for (const one of must) expect(text, surface).toContain(one)
}
