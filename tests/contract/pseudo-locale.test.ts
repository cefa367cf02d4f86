// Everything that is said, in a language that marks its texts: what no locale has made shows.

import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { commands } from '../../commands/index.ts'
import { readWritten } from '../../src/assistant/asking/written.ts'
import { reminderReply } from '../../src/assistant/due/reminder.words.ts'
import { layers } from '../../src/assistant/layers/opened.ts'
import type { Occasion } from '../../src/assistant/occasion.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { type Assistant, createAssistant } from '../../src/assistant/running/assistant.ts'
import type { Danger } from '../../src/charging/situation/dangers.ts'
import { allCommands } from '../../src/discord/commands/slash.ts'
import type { Questions } from '../../src/discord/messages/buttons.ts'
import { renderReply as renderDiscord } from '../../src/discord/messages/render.ts'
import type { Question } from '../../src/language/sentence/question.ts'
import { renderReply as renderMatrix } from '../../src/matrix/messages/render.ts'
import type { Memory } from '../../src/memory/memory.ts'
import { renderJson } from '../../src/room/render-json.ts'
import { renderFull } from '../../src/room/render-text.ts'
import { moderator } from '../support/ask.ts'
import { turns } from '../support/cases.ts'
import { type FakeBoard, fakeBoard } from '../support/fake-noticeboard.ts'
import { pseudo, unmarked } from '../support/pseudo-locale.ts'
import { allDangers, allDoubts } from '../support/situations.ts'
import { openTestMemory } from '../support/test-memory.ts'
import { type ToldAround, under } from '../support/under.ts'

const nothingTold: ToldAround = { dangers: [], doubts: [] }
let told = nothingTold
let memory: Memory
let assistant: Assistant
let board: FakeBoard
const faults: unknown[] = []

beforeAll(async () => {
  memory = await openTestMemory()
  board = fakeBoard()
  assistant = createAssistant({
    commands: under(commands, () => told),
    memory,
    clock: () => new Date('2031-05-04T10:00:00Z'),
    newSeed: () => 7,
    noticeboard: board.noticeboard,
    localeFor: pseudo,
    onFault: fault => faults.push(fault),
  })
  const owner = { scope: 'community', id: moderator.community.id } as const
  for (const [name, notation] of [
    ['wren', '3S 720mAh LiHV'],
    ['stint', '1S 550mAh LiHV'],
  ])
    await memory.kit.save({ owner, name: name ?? '', kind: 'pack', notation: notation ?? '' }, 9)
})
afterAll(async () => {
  expect(faults).toEqual([])
  await memory.close()
})

async function ask(question: string | Question, around = nothingTold, by: Occasion = moderator) {
  told = around
  const reply = await assistant.answer(question, by)
  told = nothingTold
  return reply
}

/** Notation and what the asker typed: they are the same in every language. */
function asIs({ command, question, problem, followUps, documents }: Reply): readonly string[] {
  return [
    question,
    problem?.token,
    problem?.example,
    ...followUps.map(followUp => followUp.question),
    ...documents.flatMap(({ name, text }) => [name, text]),
    command,
  ].filter(text => text !== undefined && text !== '') as string[]
}

const without = (text: string, parts: readonly string[]): string =>
  parts.toSorted((a, b) => b.length - a.length).reduce((rest, part) => rest.replaceAll(part, ' '), text)

/** What surfaces and scripts have between the texts: names of their own. */
const names = /!charge|\bchart-\d\.png|\bhttps?:\S+/g

/** Words that no locale has made, in any part of a reply and on any surface. */
function slipping(reply: Reply): readonly string[] {
  const matrix = [undefined, ...layers].map(open => renderMatrix(reply, { open }))
  const discord = (['brief', ...layers] as const).map(view =>
    renderDiscord(reply, { view, behind: everyone, pictures: [] }),
  )
  const json = JSON.parse(renderJson(reply))
  const texts = [
    renderFull(reply, { width: 100_000, colour: false }),
    ...stringsIn({ ...json, ...keysOnly, problem: { ...json.problem, verdict: '' } }),
    ...reply.figures.flatMap(({ label, text }) => [label, text]),
    ...stringsIn(reply.charts.map(({ kind: _, ...chart }) => ({ ...chart, xScale: '' }))),
    ...matrix.flatMap(({ body, formatted_body }) => [
      body,
      formatted_body.replace(/<[^>]*>/g, ' ').replace(/&\w+;|&#\d+;/g, ' '),
    ]),
    ...stringsIn(discord.map(({ embeds }) => embeds)).map(text => text.replace(/\\(.)/g, '$1')),
    ...discord.flatMap(({ components: rows }) =>
      rows.flatMap(({ components }) => components.map(({ label = '' }) => label)),
    ),
  ]
  const own = asIs(reply)
  return [...new Set(texts.flatMap(text => unmarked(without(text.replace(names, ' '), own))))]
}

/** Of JSON what is read by scripts. */
const keysOnly = { command: '', verdict: '', figures: [], understood: undefined }

const everyone = { get: (question: string) => ({ id: question.slice(0, 40) }) } as unknown as Questions

function stringsIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(stringsIn)
}

function written(question: string): Question {
  const read = readWritten(question, assistant.registry.vocabulary)
  if (!read) throw new Error(`no question in notation: ${question}`)
  return read.question
}

it('shows a text that no locale has made', () => {
  const { say, show, own } = pseudo(',')
  const text = `${say`Set ${show.current(1.5)} on the ${own('3S 720 LiHV')}.`} and leave it`
  expect(text.replace(/\s/g, ' ')).toBe('«Set »⟨1,5 A⟩« on the »‹3S 720 LiHV›«.» and leave it')
  expect(unmarked(text)).toEqual(['and', 'leave', 'it'])
})

describe('every answer', () => {
  it.each(commands.map(({ name }) => name))('of %s', async name => {
    const command = assistant.registry.get(name)
    for (const example of command.examples) expect(slipping(await ask(example)), example).toEqual([])
    const help = await ask(`help about: ${name}`)
    expect(help.problem).toBeUndefined()
    expect(slipping(help)).toEqual([])
  })
})

describe('every refusal and caution', () => {
  const isTurn = turns()

  it.each(commands.map(({ name }) => name))('of %s', async name => {
    const [example = name] = assistant.registry.get(name).examples
    for (const danger of allDangers.filter(isTurn))
      expect(slipping(await ask(example, { dangers: [danger as Danger], doubts: [] })), danger).toEqual([])
    expect(slipping(await ask(example, { dangers: [], doubts: allDoubts }))).toEqual([])
  })
})

describe('every problem', () => {
  const bad = [
    'zzz',
    '-5',
    '0',
    '7',
    '99S',
    '1,234',
    '1.2.3',
    '1e9',
    'NaN',
    '900V',
    '500%',
    '99A',
    '4.2V',
    '0.001V',
    '1000C',
    '9999°C',
    '9kg',
    '400 h',
    'a; b; c',
    '3S',
    '3S 720',
    '3S 720 LiHV 3S',
    '720 LiHV',
    '99S 720 LiHV',
    '3S 99999999 LiHV',
    '0.5/1/2/4A 9999W',
    '4/2/1A',
    '10-1A by 0.1',
    'PD 999W',
    'car',
    '12V',
    'power bank',
    '🔋',
    'dead',
    '0%',
    'empty',
    '3.82 3.83',
    '3.82 9.99 3.83',
    '0 0 0',
    '5 5 mΩ',
    'none',
    'x'.repeat(300),
  ]
  const isTurn = turns()

  it.each(commands.map(({ name }) => name))('of %s', async name => {
    const command = assistant.registry.get(name)
    const whole = written(command.examples[0] ?? name)
    expect(slipping(await ask({ command: name, options: {} }))).toEqual([])
    expect(slipping(await ask({ command: name, options: { nonesuch: '1' } }))).toEqual([])
    for (const option of Object.keys(command.takes)) {
      for (const value of bad) {
        if (!isTurn()) continue
        const alone = { command: name, options: { [option]: value } }
        const instead = { command: name, options: { ...whole.options, [option]: value } }
        expect(slipping(await ask(instead)), `${option}: ${value}`).toEqual([])
        expect(slipping(await ask(alone)), `${option}: ${value}`).toEqual([])
      }
    }
  })

  it('of a command that is none, and of a question that is none', async () => {
    expect(slipping(await ask({ command: 'nonesuch', options: {} }))).toEqual([])
  })
})

describe('questions in plain words', () => {
  it.each([
    'how long for my 3s 720 lihv at 1A from 3.7V',
    'what current for a 2s 450 on a 0.5/1/2A charger',
    'how long for a 3s 720 lihv',
    'how long does it take',
    'can my 4s 5000 li-ion charge 6 of my 3s 720 lihv',
    'storage',
    'is it safe to charge',
    'what is a C rate',
    'why store packs at half charge',
    'my pack is puffed, can I still charge it',
    'it is on fire',
    'my 3s is dead',
    '3s at 0%',
    'wie lange laden 3s 720 lihv',
    'hello',
    'thanks',
    'who won the cup',
    'zzz qqq',
    'time',
    '1A',
    '?',
    '',
    '🔋🔋🔋',
    'current '.repeat(2500),
    'time pack: 3S 720 LiHV swollen',
    'time pack: 3S 720 LiHV flibber',
    'time flibber pack: 3S 720 LiHV',
    'time pack: 3S 720 LiHV pack: 2S',
    'plan packs: 3S 720 LiHV smoking chargers: 1A',
  ])('%s', async question => {
    for (const by of [moderator, { ...moderator, place: { ...moderator.place, direct: true } }])
      expect(slipping(await ask(question, nothingTold, by))).toEqual([])
  })
})

describe('what comes without being asked for', () => {
  it('reminders', () => {
    const at = (minutes: number) => new Date(Date.UTC(2031, 4, 4, 10, minutes))
    for (const kind of ['stay', 'end'] as const)
      for (const about of ['', 'time pack: 3S 720mAh LiHV'])
        for (const zone of [undefined, 'Europe/Vienna'])
          for (const now of [at(20), at(55)])
            expect(
              slipping(
                reminderReply(
                  {
                    zone,
                    id: 'a',
                    code: 'b',
                    person: 'c',
                    place: 'd',
                    channel: 'here',
                    kind,
                    about,
                    low_s: 1200,
                    high_s: 1500,
                    setAt: at(0),
                    dueAt: at(20),
                  },
                  now,
                  pseudo('.'),
                ),
              ),
            ).toEqual([])
  })

  it('what a reminder for a time of day is answered by', async () => {
    for (const question of [
      'remind me at: 13:20',
      'remind me at: 9:30 now: 8:40 am',
      'remind me at: 0:10 now: 23:40',
      'remind list',
      'house set clock: Europe/Vienna',
      'house set clock: Middle Earth',
    ])
      expect(slipping(await ask(question))).toEqual([])
    await ask('house set clock: none')
    await ask('remind cancel')
  })

  it('cards on the board', async () => {
    for (const question of [
      'answer save title: Small packs question: current pack: 3S 720 LiHV',
      'answer save title: Low packs question: time pack: 3S 720 LiHV from: 2V per cell',
      'answer save title: Where text: At the bench by the door.',
    ])
      expect((await ask(question)).problem).toBeUndefined()
    expect(board.standing.length).toBeGreaterThan(2)
    for (const { reply } of board.standing) expect(slipping(reply)).toEqual([])
  })
})

describe('lessons', () => {
  it('every question, answered right and wrong', async () => {
    for (const lesson of ['c-rate', 'label', 'cutoff', 'balance', 'storage', 'place', 'sources', 'retire']) {
      for (let round = 0; round < 6; round++) {
        expect(slipping(await ask(`lesson ask lesson: ${lesson}`))).toEqual([])
        expect(slipping(await ask(`lesson answer is: ${round % 2 ? 'a' : 'zzz'}`))).toEqual([])
        expect(slipping(await ask(`lesson answer is: ${'abcd'[round % 4]}`))).toEqual([])
      }
      expect(slipping(await ask(`lesson read lesson: ${lesson}`))).toEqual([])
    }
  })
})

it('the menu of Discord', () => {
  const describedIn = (value: unknown): readonly string[] => {
    if (typeof value !== 'object' || value === null) return []
    const { description } = value as { description?: string }
    return [...(description === undefined ? [] : [description]), ...Object.values(value).flatMap(describedIn)]
  }
  // Cut short, a text has lost the mark of its end.
  const closed = (text: string) => (text.endsWith('…') ? `${text}»` : text)
  const menu = allCommands(commands, pseudo('.'))
  expect(describedIn(menu).flatMap(text => unmarked(closed(text)))).toEqual([])
})
