// Standard answers in use: saved by moderators, posted and pinned, kept up to date, never against people's will.

import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { commands as allCommands } from '../../../commands/index.ts'
import type { Entry } from '../../../src/assistant/command.ts'
import { linesOf } from '../../../src/assistant/layers/short.ts'
import type { Occasion } from '../../../src/assistant/occasion.ts'
import { deferenceIn } from '../../../src/assistant/reply.words.ts'
import { english } from '../../../src/ground/locale.ts'
import { type Asking, askingOf, member, moderator } from '../../support/ask.ts'
import { commandNamed } from '../../support/commands.ts'
import { type FakeBoard, fakeBoard } from '../../support/fake-noticeboard.ts'

const deference = deferenceIn(english('.'))

const answerEdit = commandNamed('answer edit')
const answerList = commandNamed('answer list')
const answerMove = commandNamed('answer move')
const answerPost = commandNamed('answer post')
const answerRemove = commandNamed('answer remove')
const answerSave = commandNamed('answer save')
const answerShow = commandNamed('answer show')
const current = commandNamed('current')
const time = commandNamed('time')
const houseSet = commandNamed('house set')
const kitRemove = commandNamed('kit remove')
const kitSave = commandNamed('kit save')

const family = [answerSave, answerList, answerShow, answerEdit, answerMove, answerPost, answerRemove]
const commands = [current, time, kitSave, kitRemove, houseSet, ...family]
const start = new Date('2031-05-04T10:00:00Z')
let now = start
const clock = () => now
const wait = (seconds: number) => {
  now = new Date(now.getTime() + seconds * 1000)
}

let board: FakeBoard
let asking: Asking
beforeEach(async () => {
  now = start
  board = fakeBoard()
  asking = await askingOf(commands, { noticeboard: board.noticeboard, clock })
})
afterEach(async () => {
  await asking.assistant.settled()
  expect(asking.faults).toEqual([])
  await asking.memory.close()
})

/** Asks, a good minute after whatever was before, and waits until everything that follows from it is done. */
async function done(question: string, by: Occasion = moderator) {
  wait(61)
  const reply = await asking.ask(question, by)
  expect(reply.problem).toBeUndefined()
  await asking.assistant.settled()
  return reply
}

const problemOf = async (question: string, by: Occasion = moderator) => (await asking.ask(question, by)).problem

const saveWren = () => done('answer save title: Wren question: current pack: 3S 720 LiHV charger: 0.5/1/2A')
const field: Occasion = { ...moderator, place: { id: 'room:field', direct: false } }
/** As at the start of the program. */
async function allCards({ assistant }: Asking) {
  await assistant.begin()
  await assistant.strike('cards')
}
const onlyCard = () => {
  expect(board.standing).toHaveLength(1)
  const [card] = board.standing
  if (!card) throw new Error('no card stands')
  return card
}

describe('a standard answer that is saved', () => {
  test('is posted where it was asked for, pinned, and complete', async () => {
    const reply = await saveWren()
    expect(reply.headline).toBe('The standard answer "Wren" is saved, and it is pinned here.')
    expect(reply.working.join()).toContain('https://example.org/1')
    const card = onlyCard()
    expect(card).toMatchObject({ place: 'room:bench-talk', pinned: true })
    expect(card.reply.headline).toMatch(/^Wren: 3S LiHV, balance charge, 0\.5 A/)
    expect(card.reply.verdict).toBe('go')
    expect(card.reply.figures.length).toBeGreaterThan(3)
    expect(card.reply.cautions.length).toBeGreaterThan(0)
    expect(card.reply.deference).toBe(deference)
  })

  test('in own words keeps them whole, whatever they look like, and carries cautions', async () => {
    const words = 'At the bench: current: never above 1C, text: see the wall; from: home only.'
    await done(`answer save title: Where we charge text: ${words}`)
    const { reply } = onlyCard()
    expect(reply.headline).toBe(`Where we charge: ${words}`)
    expect(reply.readAs).toContain("in the words of this club's moderators")
    expect(reply.cautions.map(({ key }) => key)).toContain('stayWithIt')
    expect(reply.deference).toBe(deference)
  })

  test('says the same at any time of the day', async () => {
    await done('answer save title: Wren question: time pack: 3S 720 LiHV current: 1A')
    expect(JSON.stringify(onlyCard().reply)).not.toContain('by my clock')
  })

  test('a failed pin is a note, and "answer post" pins once it may', async () => {
    board.hindered.pin = 'To pin I need the permission "Pin Messages" there.'
    const reply = await saveWren()
    expect(reply.headline).toBe(
      'The standard answer "Wren" is saved, and it stands here, not pinned. To pin I need the permission "Pin Messages" there.',
    )
    expect(onlyCard().pinned).toBe(false)
    delete board.hindered.pin
    await done('answer post title: Wren')
    expect(onlyCard().pinned).toBe(true)
  })

  test('one that cannot be posted is saved all the same, and posted later', async () => {
    board.hindered.post = 'I may not write there.'
    expect((await saveWren()).headline).toBe(
      'The standard answer "Wren" is saved, but it stands nowhere yet. I may not write there.',
    )
    expect((await done('current pack: 3S 720 LiHV charger: 0.5/1/2A', member)).seeAlso).toContain('"Wren"')
    delete board.hindered.post
    await done('answer post title: Wren')
    expect(onlyCard().pinned).toBe(true)
  })

  test('a platform that fails costs the card, not the answer', async () => {
    board.hindered.platform = new Error('no connection')
    expect((await saveWren()).headline).toContain('"answer post" tries again')
    expect(asking.faults).toHaveLength(1)
    ;(asking.faults as unknown[]).length = 0
    delete board.hindered.platform
    await done('answer post title: Wren')
    expect(onlyCard().pinned).toBe(true)
  })

  test.each([
    ['answer save title: Wren', 'what the standard answer is'],
    ['answer save title: Wren question: current pack: 3S', 'capacity'],
    ['answer save title: Wren question: current pack: mine', 'mine'],
    ['answer save title: Wren question: house set rate: 1C', ''],
    ['answer save title: Wren question: answer show title: Wren', ''],
    ['answer save question: current pack: 3S 720 LiHV', 'title'],
    [`answer save title: Wren text: ${'long '.repeat(200)}`, '700'],
    [`answer save title: ${'long '.repeat(20)} text: x`, '80'],
  ])('is refused where it could not be one: %s', async (question, hint) => {
    expect(JSON.stringify(await problemOf(question))).toContain(hint)
    expect(await asking.memory.answers.list(member.community.id)).toEqual([])
    expect(board.standing).toEqual([])
  })

  test('does not take a name from the moderator’s own kit', async () => {
    await done('kit save name: wren pack: 3S 720 LiHV')
    expect(await problemOf('answer save title: Wren question: current pack: wren')).toBeDefined()
    await done('kit save name: wren pack: 3S 720 LiHV for: club')
    await done('answer save title: Wren question: current pack: wren')
  })
})

describe('only moderators', () => {
  test.each([answerSave, answerEdit, answerMove, answerPost, answerRemove].flatMap(({ examples }) => examples))(
    'a member may not: %s',
    async question => {
      await done('answer save title: Where we charge text: At the bench.')
      const before = JSON.stringify([board.standing, await asking.memory.answers.list(member.community.id)])
      expect((await problemOf(question, member))?.what).toBe(
        'Only moderators change the standard answers of this club.',
      )
      const after = JSON.stringify([board.standing, await asking.memory.answers.list(member.community.id)])
      expect(after).toBe(before)
    },
  )

  test('everybody may look', async () => {
    await saveWren()
    expect((await done('answer list', member)).headline).toBe('Standard answers: Wren.')
    expect((await done('answer show title: wren', member)).headline).toMatch(/^Wren: 3S LiHV, balance charge, 0\.5 A/)
    expect(await problemOf('answer show title: owl', member)).toBeDefined()
  })
})

describe('the card is live', () => {
  test('a house limit changes it in place, and it stays pinned', async () => {
    await saveWren()
    await done('house set chemistry: LiHV rate: 0.5C pinned: change')
    const card = onlyCard()
    expect(card.edits).toBe(1)
    expect(card.pinned).toBe(true)
    expect(card.reply.headline).toContain('the rules of this club allow')
  })

  test('what a house limit changes on it is listed first, and done only then', async () => {
    await saveWren()
    const listed = await problemOf('house set chemistry: LiHV rate: 0.5C')
    expect(listed?.what).toMatch(/Pinned answers that change: Wren: GO ✅ becomes NO ⛔/)
    expect(await asking.memory.house.rules(member.community.id)).toEqual({})
    expect(onlyCard().edits).toBe(0)
    await done('yes')
    expect(onlyCard().edits).toBe(1)
    expect((await problemOf('house set chemistry: LiHV rate: none'))?.what).toContain('NO ⛔ becomes GO ✅')
    expect(onlyCard().edits).toBe(1)
  })

  test('the same in plain words, once', async () => {
    await asking.memory.close()
    asking = await askingOf(allCommands, { noticeboard: board.noticeboard, clock })
    await done('answer save title: Wren question: current pack: 3S 720 LiHV')
    const listed = await problemOf('no charging of LiHV above 0.5C in our club, set that as a rule', field)
    expect(listed?.what).toMatch(/Pinned answers that change: Wren, current to set: 0\.72.A becomes 0\.36.A/)
    await done('yes', field)
    expect(onlyCard().edits).toBe(1)
  })

  test('a kit entry changes it in place', async () => {
    await done('kit save name: wren pack: 3S 720 LiHV for: club')
    await done('answer save title: Wren question: current pack: wren')
    await done('kit save name: wren pack: 3S 1300 LiHV for: club')
    expect(onlyCard()).toMatchObject({ edits: 1 })
    expect(onlyCard().reply.headline).toContain('1.3 A')
    await done('kit remove name: wren for: club')
    expect(onlyCard().reply.problem).toBeDefined()
  })

  test('what changes nothing on it edits nothing', async () => {
    await saveWren()
    await done('house set chemistry: LiFe rate: 0.5C')
    await done('kit save name: owl pack: 2S 450 LiPo for: club')
    await allCards(asking)
    expect(onlyCard().edits).toBe(0)
  })

  test('another community’s changes leave it alone', async () => {
    await saveWren()
    const elsewhere = { ...moderator, community: { id: 'room:other', name: 'Other' } }
    await done('house set chemistry: LiHV rate: 0.5C', elsewhere)
    expect(onlyCard().edits).toBe(0)
  })

  test('a newer program with other words edits it when it starts', async () => {
    await saveWren()
    const otherWords: Entry = {
      ...current,
      answer: async (_, { locale: { own } }) => ({
        headline: own('Set less.'),
        cautions: [{ key: 'k', text: own('c') }],
      }),
    }
    const newer = await askingOf([otherWords, ...family], { noticeboard: board.noticeboard, memory: asking.memory })
    await allCards(newer)
    expect(newer.faults).toEqual([])
    expect(onlyCard().reply.headline).toBe('Wren: Set less.')
    expect(onlyCard().pinned).toBe(true)
  })

  test('a fault of ours leaves it as it is', async () => {
    await saveWren()
    const broken = {
      ...current,
      answer: () => {
        throw new Error('broken')
      },
    }
    const newer = await askingOf([broken, ...family], { noticeboard: board.noticeboard, memory: asking.memory })
    await allCards(newer)
    expect(newer.faults).toHaveLength(1)
    expect(onlyCard().edits).toBe(0)
  })

  test('an edit that failed is made up for in the next round', async () => {
    await saveWren()
    board.hindered.platform = new Error('no connection')
    await done('house set chemistry: LiHV rate: 0.5C pinned: change')
    expect(onlyCard().edits).toBe(0)
    ;(asking.faults as unknown[]).length = 0
    delete board.hindered.platform
    await allCards(asking)
    expect(onlyCard().edits).toBe(1)
  })

  test('deleted by hand it stays away until it is asked for', async () => {
    await saveWren()
    board.standing.length = 0
    await done('house set chemistry: LiHV rate: 0.5C pinned: change')
    await allCards(asking)
    expect(board.standing).toEqual([])
    await done('answer post title: Wren')
    expect(onlyCard().pinned).toBe(true)
    expect(onlyCard().reply.headline).toContain('the rules of this club allow')
  })

  test('it shows who changed it and when, and no name of whoever is forgotten', async () => {
    await saveWren()
    expect(linesOf(onlyCard().reply).at(-2)).toBe('Changed 2031-05-04 10:01 UTC by Odile.')
    await done('answer edit title: Wren text: Ask Ada.', { ...moderator, asker: { ...moderator.asker, name: 'Ada' } })
    expect(linesOf(onlyCard().reply).at(-2)).toBe('Changed 2031-05-04 10:02 UTC by Ada.')
    await asking.memory.members.forget(moderator.asker.id)
    await done('answer post title: Wren')
    expect(linesOf(onlyCard().reply).at(-2)).toBe('Changed 2031-05-04 10:02 UTC.')
  })

  test('it is edited once a minute at most, and then says what holds', async () => {
    await saveWren()
    await done('house set chemistry: LiHV rate: 0.5C pinned: change')
    expect(onlyCard().edits).toBe(1)
    for (const rate of ['0.6C', '0.7C', '0.8C']) {
      wait(-60)
      await done(`house set chemistry: LiHV rate: ${rate} pinned: change`)
    }
    const before = onlyCard().reply
    expect(onlyCard().edits).toBe(1)
    wait(57)
    await asking.assistant.strike('cards')
    expect(onlyCard().edits).toBe(2)
    expect(onlyCard().reply).not.toEqual(before)
  })

  test('unpinned by hand it stays unpinned', async () => {
    await saveWren()
    onlyCard().pinned = false
    await done('house set chemistry: LiHV rate: 0.5C pinned: change')
    await done('answer post title: Wren')
    await done('answer edit title: Wren new-title: Wren indoors')
    expect(onlyCard()).toMatchObject({ pinned: false })
    expect(onlyCard().reply.headline).toMatch(/^Wren indoors: /)
  })
})

describe('changing', () => {
  test('an edit changes the card in place', async () => {
    await saveWren()
    await done('answer edit title: wren new-title: Owl question: current pack: 2S 450 LiPo')
    expect(onlyCard().reply.headline).toMatch(/^Owl: /)
    expect(onlyCard().reply.question).toBe('current pack: 2S 450mAh LiPo')
    await done('answer edit title: Owl text: Ask at the bench.')
    expect(onlyCard().reply.headline).toBe('Owl: Ask at the bench.')
    expect(onlyCard()).toMatchObject({ pinned: true, edits: 2 })
  })

  test('a title that is taken is refused, on saving and on editing', async () => {
    await saveWren()
    await done('answer save title: Owl text: Ask at the bench.')
    expect(await problemOf('answer save title: OWL text: x')).toBeDefined()
    expect(await problemOf('answer edit title: Wren new-title: owl')).toBeDefined()
    expect(await problemOf('answer edit title: Wren')).toBeDefined()
  })

  test('a card that is moved while the old one cannot be taken away says so', async () => {
    await saveWren()
    board.hindered.remove = new Error('it takes nothing away')
    expect((await done('answer move title: Wren', field)).headline).toContain('delete it by hand')
    expect(asking.faults).toHaveLength(1)
    ;(asking.faults as unknown[]).length = 0
    expect(board.standing).toHaveLength(2)
  })

  test('a card is moved to where it is asked for', async () => {
    await saveWren()
    await done('answer move title: Wren', field)
    expect(onlyCard()).toMatchObject({ place: 'room:field', pinned: true })
    expect((await done('answer move title: Wren', field)).headline).toContain('already')
  })

  test('a card that cannot go there stays where it was', async () => {
    await saveWren()
    board.hindered.post = 'I may not write there.'
    expect((await done('answer move title: Wren', field)).headline).toContain('left where it was')
    delete board.hindered.post
    expect(onlyCard()).toMatchObject({ place: 'room:bench-talk', pinned: true })
    await done('house set chemistry: LiHV rate: 0.5C pinned: change')
    expect(onlyCard().edits).toBe(1)
  })

  test('removing takes the card away', async () => {
    await saveWren()
    await done('answer remove title: Wren')
    expect(board.standing).toEqual([])
    expect((await done('answer list')).headline).toContain('no standard answer yet')
  })
})

describe('two moderators at once', () => {
  test('who edit one answer leave a card that shows what is kept', async () => {
    await done('answer save title: Wren text: First.')
    await Promise.all([done('answer edit title: Wren text: Second.'), done('answer edit title: Wren text: Third.')])
    const kept = await asking.memory.answers.find(member.community.id, 'Wren')
    expect(onlyCard().reply.headline).toBe(`Wren: ${kept?.content}`)
  })

  test('an edit overtaken by a later one does not leave old words on the card', async () => {
    await done('answer save title: Wren text: First.')
    const other = await askingOf(commands, { noticeboard: board.noticeboard, memory: asking.memory })
    board.beforeNextEdit = async () => {
      await other.ask('answer edit title: Wren text: Third.', moderator)
      await other.assistant.settled()
    }
    await done('answer edit title: Wren text: Second.')
    expect(onlyCard().reply.headline).toBe('Wren: Third.')
    expect(other.faults).toEqual([])
  })

  test('an edit during the first post ends in one card with the new words', async () => {
    board.beforeNextPin = () => asking.ask('answer edit title: Wren text: Second.', moderator)
    await done('answer save title: Wren text: First.')
    expect(onlyCard().reply.headline).toBe('Wren: Second.')
    expect(onlyCard().pinned).toBe(true)
  })

  test('who post one deleted card at once leave one card', async () => {
    await saveWren()
    board.standing.length = 0
    await Promise.all([done('answer post title: Wren'), done('answer post title: Wren')])
    expect(onlyCard().pinned).toBe(true)
  })
})

describe('asking what is a standard answer', () => {
  test('points to it, however it is asked', async () => {
    await saveWren()
    const seeAlso = 'the standard answer "Wren" of this club, https://example.org/1'
    expect((await done('current charger: 0.5/1/2A pack: 3s 720mah hv', member)).seeAlso).toBe(seeAlso)
    expect((await done('what current for a 3S 720 LiHV on a 0.5/1/2A charger', member)).seeAlso).toBe(seeAlso)
    expect((await done('current pack: 3S 730 LiHV charger: 0.5/1/2A', member)).seeAlso).toBeUndefined()
  })

  test('in another community it does not', async () => {
    await saveWren()
    const elsewhere = { ...member, community: { id: 'room:other', name: 'Other' } }
    expect((await done('current pack: 3S 720 LiHV charger: 0.5/1/2A', elsewhere)).seeAlso).toBeUndefined()
  })

  test('follows the kit', async () => {
    await done('kit save name: wren pack: 3S 720 LiHV for: club')
    await done('answer save title: Wren question: current pack: wren')
    await done('kit save name: wren pack: 3S 1300 LiHV for: club')
    expect((await done('current pack: 3S 1300 LiHV', member)).seeAlso).toContain('"Wren"')
    expect((await done('current pack: 3S 720 LiHV', member)).seeAlso).toBeUndefined()
  })
})

test('titles are completed where one is wanted, not where a new one is', async () => {
  await saveWren()
  expect(await asking.assistant.complete('answer show', 'title', 'w', member)).toEqual(['Wren'])
  expect(await asking.assistant.complete('answer save', 'title', 'w', member)).toEqual([])
})
