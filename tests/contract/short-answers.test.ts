// What a phone shows of an answer: how much, in which order, and nothing that its surface cannot do.

import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { budget, fits, rowsOf, unbroken, usedBy, wrapped } from '../../src/assistant/layers/budget.ts'
import { layersOf, openLayer } from '../../src/assistant/layers/opened.ts'
import { type Part, type ShortLine, shortOf } from '../../src/assistant/layers/short.ts'
import { verdictWords } from '../../src/assistant/layers/short.words.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { deferenceIn } from '../../src/assistant/reply.words.ts'
import { buttonRows, questionsBehind } from '../../src/discord/messages/buttons.ts'
import { renderReply as renderDiscord } from '../../src/discord/messages/render.ts'
import { english } from '../../src/ground/locale.ts'
import { handbook } from '../../src/handbook/entries.ts'
import { offeredBy, tapIn } from '../../src/matrix/messages/reactions.ts'
import { renderReply as renderMatrix } from '../../src/matrix/messages/render.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { renderText } from '../../src/room/render-text.ts'
import { nextOf, tapsOf } from '../../src/room/typed-next.ts'
import { authors, heldOut, messagesOf } from '../../training/corpus/read-corpus.ts'
import { type Asking, askingOf, moderator } from '../support/ask.ts'
import { cases, someOf } from '../support/cases.ts'
import { demoAsking } from '../support/demo-asking.ts'
import { type Clubs, openClubs } from '../support/every-command/clubs.ts'
import { someStyle } from '../support/every-command/notation.ts'
import { type AskedAs, askedAs } from '../support/every-command/questions.ts'
import { someScene } from '../support/every-command/scene.ts'
import { fakeBoard } from '../support/fake-noticeboard.ts'

const clock = () => new Date('2031-05-04T10:00:00Z')

let clubs: Clubs
let asking: Asking
beforeAll(async () => {
  clubs = await openClubs()
  asking = await demoAsking(commands, { noticeboard: fakeBoard().noticeboard, clock, newSeed: () => 1 })
})
afterAll(async () => {
  await clubs.close()
  expect(asking.faults).toEqual([])
  await asking.memory.close()
})

/** In reading order. */
const order: readonly Part[] = [
  'lead',
  'answer',
  'choice',
  'item',
  'reading',
  'standing',
  'start',
  'must',
  'caution',
  'care',
]
const marks = Object.values(verdictWords(english('.')))

/** What must be said may go over. */
const ordinary = (lines: readonly ShortLine[]): readonly string[] =>
  lines.flatMap(({ part, text }) => (part === 'must' || part === 'lead' ? [] : [text]))

/** What is worked out is said as at the bench; what was asked for is said as it was. */
function expectRounded({ question = '', readAs }: Reply, lines: readonly ShortLine[]): void {
  for (const { part, text } of lines) {
    if (part === 'reading' || part === 'item') continue
    for (const [said, , minutes] of text.replaceAll('\u00a0', ' ').matchAll(/(\d+) h (\d+) min/g))
      if (!question.includes(`${minutes}min`)) expect(Number(minutes) % 5, `${readAs}: ${said}: ${text}`).toBe(0)
    for (const [said, capacity] of text.matchAll(/about (\d+).mAh/g))
      if (!question.includes(`${capacity}mAh`))
        expect(Number(Number(capacity).toPrecision(2)), `${readAs}: ${said}: ${text}`).toBe(Number(capacity))
  }
}

/** What must be said stands in every layer, of a refusal each step of it. */
function expectInLayers(reply: Reply): void {
  const isRefused = reply.verdict === 'do not charge' && !reply.problem
  const steps = shortOf(reply).flatMap(({ part, text }) => (part === 'answer' || part === 'must' ? [text] : []))
  const musts = reply.cautions.flatMap(({ must, text }) => (must ? [text] : []))
  for (const layer of layersOf(reply)) {
    const { lines, closing } = openLayer(reply, layer)
    expect(lines.length, `${reply.readAs}: ${layer}`).toBeGreaterThan(0)
    for (const must of isRefused ? steps : musts) expect([...lines, ...closing], `${layer}`).toContain(must)
    expect(closing.at(-1)).toBe(deferenceIn(reply.locale))
  }
}

function expectShort(reply: Reply): void {
  const lines = shortOf(reply)
  const asked = reply.question ?? reply.readAs
  expectRounded(reply, lines)
  expectInLayers(reply)
  const shown = ordinary(lines)
  expect(fits(shown), [asked, JSON.stringify(usedBy(shown)), ...shown].join('\n')).toBe(true)
  const parts = lines.slice(0, -1).map(({ part }) => order.indexOf(part))
  expect(
    parts.toSorted((a, b) => a - b),
    asked,
  ).toEqual(parts)
  expect(lines.at(-1), asked).toEqual({ part: 'deference', text: deferenceIn(reply.locale) })
  for (const { text, must } of reply.cautions)
    if (must) expect(lines.map(line => line.text).join('\n'), asked).toContain(text)
  if (reply.verdict) expect(lines[0]?.text.startsWith(verdictWords(reply.locale)[reply.verdict]), asked).toBe(true)
  expect(
    lines.slice(1).some(({ text }) => marks.some(mark => text.startsWith(mark))),
    asked,
  ).toBe(false)
}

/** Words of those who made it; what was typed is quoted. */
const ofTheMachine =
  /show working|(?<!")\b(?:figures? (?:is|are|on)|figure|situation|envelope)\b(?!")|cutoff per cell|chemistry stands|\.ts\b/i

/** Every surface shows the same lines, within what a phone has room for, and each tap that it offers leads on. */
function expectOnSurfaces(reply: Reply): void {
  const short = shortOf(reply)
  const isOrdinary = ordinary(short).length === short.length
  const room = renderText(reply, { width: budget.columns, colour: false }, tapsOf(reply)).split('\n')
  const behind = new Map(
    questionsBehind(reply).map((question, at) => [question, { id: `id-${String(at).padStart(13, '0')}` }]),
  )
  const [embed] = renderDiscord(reply, { view: 'brief', behind, pictures: [] }).embeds
  const matrix = renderMatrix(reply).body.split('\n')
  if (isOrdinary) {
    expect(room.length, reply.question).toBeLessThanOrEqual(budget.rows)
    expect(embed?.description?.length, reply.question).toBeLessThanOrEqual(1000)
    expect(embed?.fields, reply.question).toBeUndefined()
    expect(fits(matrix), `${matrix.join('\n')}`).toBe(true)
  }
  for (const layer of layersOf(reply)) expect(nextOf(layer, reply)).toEqual({ kind: 'layer', layer })
  for (const { sign, tap } of offeredBy(reply)) expect(tapIn(sign)).toEqual(tap)
  const buttons = buttonRows(reply, behind).flatMap(({ components }) => components)
  if (reply.question !== undefined) expect(buttons.length).toBeGreaterThanOrEqual(layersOf(reply).length)
  const said = [...room, embed?.description ?? '', ...matrix].join('\n')
  expect(said).not.toMatch(ofTheMachine)
  for (const layer of layersOf(reply)) {
    const { lines, closing } = openLayer(reply, layer)
    expect([...lines, ...closing].join('\n')).not.toMatch(ofTheMachine)
  }
  expect(embed?.description).not.toContain('--full')
}

describe('a short answer', () => {
  it.each(
    commands.map(({ name, examples, words }) => [name, [...examples, ...(words(english('.')).asks ?? [])]] as const),
  )('to %s, as in its examples', async (_, questions) => {
    for (const question of questions) {
      const reply = await asking.ask(question, moderator)
      expectShort(reply)
      expectOnSurfaces(reply)
    }
  })

  it.each(
    commands.flatMap(({ name, words }) => (words(english('.')).asks ?? []).map(question => [name, question] as const)),
  )('%s is asked so: %s', async (name, question) => {
    const { command, problem } = await asking.ask(question, { ...moderator, place: { id: question, direct: true } })
    expect({ command, problem }).toEqual({ command: name, problem: undefined })
  })

  it('is given to what people tell of what is saved, and it is that which is read', async () => {
    const told = commands.flatMap(({ name, words }) =>
      (words(english('.')).tells ?? []).map(sentence => [name, sentence] as const),
    )
    expect(told.length).toBeGreaterThan(10)
    for (const [name, sentence] of told) {
      const apart = await askingOf(commands, { noticeboard: fakeBoard().noticeboard, clock })
      if (name !== 'kit save') await apart.ask('kit save name: wren pack: 3S 720 LiHV', moderator)
      if (name !== 'answer save') await apart.ask('answer save title: Small packs text: At the bench.', moderator)
      const reply = await apart.ask(sentence, moderator)
      // What removes or overwrites asks once more.
      const isSure = reply.problem === undefined || reply.followUps.some(({ label }) => label === 'yes')
      expect({ command: reply.command, isSure }, `${sentence}: ${reply.headline}`).toEqual({
        command: name,
        isSure: true,
      })
      expectShort(reply)
      expect(apart.faults).toEqual([])
      await apart.memory.close()
    }
  })

  const asked = commands.flatMap(({ words }) => words(english('.')).asks ?? [])

  it('to what is asked of packs whose type is not said', async () => {
    const untyped = [...new Set(asked.map(one => one.replace(/ (?:LiPo|LiHV|Li-ion|LiFe)\b/g, '')))]
    expect(untyped.filter(one => !asked.includes(one as (typeof asked)[number])).length).toBeGreaterThan(10)
    for (const question of untyped) {
      const reply = await asking.ask(question, { ...moderator, place: { id: `untyped ${question}`, direct: true } })
      expectShort(reply)
      expectOnSurfaces(reply)
    }
  })

  it('to "why", "figures please" and "in short" after any answer', async () => {
    for (const question of asked) {
      const there = { ...moderator, place: { id: `more ${question}`, direct: true } }
      await asking.ask(question, there)
      for (const more of ['why', 'figures please', 'in short']) expectShort(await asking.ask(more, there))
    }
  })

  it.each([
    '',
    'b',
    'what current for a 99S 720 LiHV',
    'flibber',
    'what current for my 2S lipo',
    'how many can I charge with a 4S 5000 Li-ion',
    'current pack: 99S 720 LiHV',
    'time pack: 3S 720 LiHV current: -5A',
    'current pack: 3S 1,234 LiHV',
    'my pack is puffed, can I charge it',
    'it is on fire',
    'may I charge overnight',
    'current 3S 2200',
  ])('to %j', async question => {
    const reply = await asking.ask(question, { ...moderator, place: { id: `short ${question}`, direct: true } })
    expectShort(reply)
    expectOnSurfaces(reply)
  })

  it.each([
    'lipo was in a crash and is smoking',
    'kid swallowed a coin cell',
    'my pack burnt my hand, it is hot',
    'my swollen lipo is on fire and my hand is burnt',
    'the pack in the hut is hissing, nobody is there',
  ])('to %j is five lines', async question => {
    const { reasons, ...reply } = await asking.ask(question, moderator)
    expect(reasons?.[0]).toMatch(/^(?:fire|injury)$/)
    const lines = shortOf(reply)
    expect(lines.length).toBe(5)
    expect(lines[0]?.text).toMatch(/Get away|First aid/)
    expectInLayers(reply)
  })

  it.each([
    'storage',
    'time',
    'lend',
    'kit save name: wren',
    'log show plovr',
    'call the bait boat pack Titanic from now on',
    'current pack: 3S 1,234 LiHV',
    'time pack: 3S 720 LiHV at: 3A',
    'supply source: PD 700W',
    'is a PD 700W supply enough for a 3S 720 LiHV',
    'how long 3S 720 LiHV at 3000A',
    'can I charge a 2S lipo with a 5V usb',
    'current pack: wrne',
    'remind me in 3 years to measure the wing packs',
    'what current for a 3S lipo',
  ])('to %j says what is wrong where, and leads on by a tap', async question => {
    const place = { id: `mend ${question}`, direct: true }
    await asking.ask('kit save name: wren pack: 3S 720 LiHV', moderator)
    const { problem, followUps } = await asking.ask(question, { ...moderator, place })
    expect(followUps.length).toBeGreaterThanOrEqual(1)
    expect(followUps.length).toBeLessThanOrEqual(4)
    if (problem?.token) expect(question).toContain(problem.token)
    // The asker's own question, but for the word that was wrong.
    if (problem?.token && followUps.length === 1 && followUps[0]?.label !== problem.example)
      expect(followUps[0]?.label.startsWith(question.slice(0, question.indexOf(problem.token)))).toBe(true)
    for (const next of followUps) {
      const { problem: left } = await asking.ask(next.question, { ...moderator, place })
      expect(left, next.question).toBeUndefined()
    }
  })

  it.each(['house set rate: 1C', 'kit save name: wren pack: 3S 720 LiHV for: club', 'answer list'])(
    'to %j asks nothing where there is nothing to say otherwise',
    async question => {
      const [line] = shortOf(await asking.ask(question))
      expect(line?.text).not.toContain('❓')
    },
  )

  it('speaks of care in passing where nothing is charged', async () => {
    for (const question of ['kit list', 'undo', 'history', 'remind me in 50 min'])
      expect((await asking.ask(question, moderator)).cautions.map(({ text }) => text)).toEqual([
        'If something charges now, stay with it.',
      ])
  })

  it('in the room speaks of nothing that only a chat has', async () => {
    const questions = commands.flatMap(({ examples, words }) => [...examples, ...(words(english('.')).asks ?? [])])
    for (const question of questions) {
      const reply = await asking.ask(question, roomOccasion({ conversation: 1 }))
      if (reply.command === 'help' || reply.readAs.includes('direct message')) continue
      const layers = layersOf(reply).flatMap(layer => openLayer(reply, layer).lines)
      const said = [renderText(reply, { width: 80, colour: false }, tapsOf(reply)), ...layers].join('\n')
      expect(said, question).not.toMatch(/direct message|\breactions?\b|\bbuttons?\b/i)
    }
  })

  it('to what people ask that tells of no danger', async () => {
    const learned = authors.filter(author => !heldOut.has(author)).flatMap(messagesOf)
    const harmless = learned.filter(({ dangers }) => dangers.length === 0)
    const every = Math.ceil(harmless.length / someOf(1000))
    for (const { text } of harmless.filter((_, at) => at % every === 0)) {
      const reply = await asking.ask(text, { ...moderator, place: { id: `said ${text}`, direct: true } })
      expectShort(reply)
      expectOnSurfaces(reply)
    }
  })

  it('to what the handbook knows', async () => {
    for (const { title } of handbook) expectShort(await asking.ask(`handbook about: ${title}`, moderator))
  })

  it('to whatever is asked', async () => {
    const asked = Object.entries(askedAs).filter((entry): entry is [string, AskedAs] => 'weight' in entry[1])
    const someCommand = fc.constantFrom(...asked.map(([command]) => command))
    await fc.assert(
      fc.asyncProperty(someCommand, someScene, someStyle, async (command, scene, style) => {
        const reply = await clubs.answered(command, scene, style)
        if (!reply) return
        expectShort(reply)
        expectOnSurfaces(reply)
      }),
      cases(300),
    )
  })
})

describe('the budget', () => {
  it('counts rows as a narrow screen wraps them', () => {
    expect([rowsOf('x'.repeat(42)), rowsOf('x'.repeat(43)), rowsOf('GO ✅ yes')]).toEqual([1, 2, 1])
    expect(fits(Array.from({ length: budget.lines + 1 }, () => 'x'))).toBe(false)
  })

  it('parts no number from its unit', () => {
    expect(wrapped('about 14.8 V for 1 h 10 min', 11)).toEqual(['about', '14.8 V for', '1 h 10 min'])
    expect(unbroken('at 2 Volts or 3 Wh')).toBe('at 2 Volts or 3\u00a0Wh')
  })
})
