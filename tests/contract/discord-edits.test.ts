// A question that is edited or taken away on Discord once it was answered: the answer follows, and nothing is done twice.

import { expect, test, vi } from 'vitest'
import { commandNamed } from '../support/commands.ts'
import { answersIn, firstLine } from '../support/discord-answers.ts'
import { deadly } from '../support/discord-commands.ts'
import { deleted, edited, type MessageEvent, mentionOfBot, message, pilot } from '../support/discord-events.ts'
import { withDiscordRoom } from '../support/with-discord-room.ts'

const { room } = withDiscordRoom({ commands: [deadly, commandNamed('kit save'), commandNamed('undo')] })

const told = (event: string, data: unknown) => room().discord.gateway.dispatch(event, data)
const answers = () => answersIn(room().discord)
const until = (holds: () => unknown) => vi.waitFor(holds, { timeout: 5000, interval: 10 })
const noted = async (said: MessageEvent) => (await room().memory.answered.byQuestion(`discord:${said.id}`))?.question

/** Asked, answered and noted. */
async function asked(words: string, as: Parameters<typeof message>[1] = {}): Promise<MessageEvent> {
  const said = message(as.direct ? words : `${mentionOfBot} ${words}`, as)
  told('MESSAGE_CREATE', said)
  await vi.waitFor(async () => expect(await noted(said)).toBeDefined())
  return said
}
/** What was said so far is dealt with: all goes in the order in which it came. */
async function settled() {
  const before = answers().length
  told('MESSAGE_CREATE', message(`${mentionOfBot} tray list`))
  await until(() => expect(answers().length).toBe(before + 1))
  room().discord.messages.pop()
}

test('an edit edits the answer, once, and what it asked before is no longer the question', async () => {
  const said = await asked('bench pack: 1S 300 LiPo')
  const change = edited(said, `${mentionOfBot} bench pack: 2S 450 LiPo`)
  for (const _ of ['once', 'and again after a reconnect']) told('MESSAGE_UPDATE', change)
  await until(() => expect(answers()).toEqual(['Set 0.5 A for 2S 450 LiPo.']))
  await settled()
  expect(room().discord.messages[0]?.edits).toBe(1)
  expect(await noted(said)).toBe('bench pack: 2S 450 LiPo')
})

test('a question that could not be read is mended by an edit', async () => {
  const said = await asked('bench pack: nonsense')
  told('MESSAGE_UPDATE', edited(said, `${mentionOfBot} bench pack: 2S 450 LiPo`))
  await until(() => expect(answers()).toEqual(['Set 0.5 A for 2S 450 LiPo.']))
})

test('an edit that comes while the answer is on its way waits for it', async () => {
  const said = message(`${mentionOfBot} bench pack: 1S 300 LiPo`)
  told('MESSAGE_CREATE', said)
  told('MESSAGE_UPDATE', edited(said, `${mentionOfBot} bench pack: 2S 450 LiPo`))
  await until(() => expect(answers()).toEqual(['Set 0.5 A for 2S 450 LiPo.']))
})

test('after a quarter of an hour, and where only a link was unfolded, the answer stays', async () => {
  const said = await asked('bench pack: 1S 300 LiPo')
  const other = `${mentionOfBot} bench pack: 2S 450 LiPo`
  told('MESSAGE_UPDATE', edited(said, other, 15 * 60_000 + 1))
  told('MESSAGE_UPDATE', { ...said, embeds: [{ type: 'link', url: 'https://example.org' }] })
  await settled()
  expect(answers()).toEqual(['Set 0.5 A for 1S 300 LiPo.'])
})

test('a mention that an edit adds is answered; an edit among people is not', async () => {
  const said = message('bench pack: 1S 300 LiPo')
  told('MESSAGE_CREATE', said)
  told('MESSAGE_UPDATE', edited(said, 'bench pack: 2S 450 LiPo', 1000))
  await settled()
  expect(answers()).toEqual([])
  told('MESSAGE_UPDATE', edited(said, `${mentionOfBot} bench pack: 2S 450 LiPo`))
  await until(() => expect(answers()).toEqual(['Set 0.5 A for 2S 450 LiPo.']))
})

test('an edit after which nothing may be charged is answered anew, for nobody is told of an edit', async () => {
  const said = await asked('bench pack: 1S 300 LiPo')
  const [before] = room().discord.messages
  told('MESSAGE_UPDATE', edited(said, `${mentionOfBot} deadly`))
  await until(() => expect(answers()).toEqual(['Leave it.']))
  expect(room().discord.messages[0]?.id).not.toBe(before?.id)
  expect(room().discord.messages[0]?.body.message_reference.message_id).toBe(said.id)
})

test('what was done is not done again: the answer says that it stands, and how it is taken back', async () => {
  const said = await asked('tray add pack: 1S 300 LiPo')
  told('MESSAGE_UPDATE', edited(said, `${mentionOfBot} tray add pack: 2S 450 LiPo`))
  await until(() =>
    expect(answers()).toEqual([
      'You edited this after it was done: tray add. The edit changed nothing; ask anew. It cannot be taken back.',
    ]),
  )
})

test('what was saved stands, and is taken back as the answer then says', async () => {
  const kept = () => room().memory.kit.count({ scope: 'person', id: `discord:${pilot.id}` })
  const said = await asked('kit save name: wren pack: 3S 720 LiHV')
  const [answer] = room().discord.messages
  told('MESSAGE_UPDATE', edited(said, `${mentionOfBot} kit save name: lark pack: 3S 720 LiHV`))
  await until(() => expect(firstLine(answer?.body)).toMatch(/^You edited this after it was done: kit save.* undo$/))
  expect([answer?.channel, await kept()]).toEqual([`9${pilot.id}`, 1])
  await asked('undo', { direct: true })
  expect(await kept()).toBe(0)
})

test('a message that is taken away takes its answer along, also where it was one of many', async () => {
  const [first, second] = [await asked('bench pack: 1S 300 LiPo'), await asked('bench pack: 2S 450 LiPo')]
  const direct = await asked('bench pack: 3S 720 LiHV', { direct: true })
  told('MESSAGE_DELETE', deleted(first))
  await until(() => expect(answers()).toHaveLength(2))
  told('MESSAGE_DELETE', deleted(direct))
  await until(() => expect(answers()).toEqual(['Set 0.5 A for 2S 450 LiPo.']))
  const { channel_id, guild_id } = second
  told('MESSAGE_DELETE_BULK', { ids: [first.id, second.id], channel_id, guild_id })
  await until(() => expect(answers()).toEqual([]))
})

test('one that is taken away before it is answered leaves no answer', async () => {
  const said = message(`${mentionOfBot} bench pack: 1S 300 LiPo`)
  told('MESSAGE_CREATE', said)
  told('MESSAGE_DELETE', deleted(said))
  await settled()
  expect(answers()).toEqual([])
})

test('what was done though is told in private, or where the question stood', async () => {
  const [first, second] = [await asked('tray add pack: 1S 300 LiPo'), await asked('tray add pack: 1S 300 LiPo')]
  told('MESSAGE_DELETE', deleted(first))
  const gone = 'The question is gone, and so is my answer. It was done all the same: tray add. It cannot be taken back.'
  await until(() => expect(answers()).toContain(gone))
  expect(room().discord.messages.at(-1)?.channel).toBe(`9${pilot.id}`)
  room().discord.denied.direct = 50007
  told('MESSAGE_DELETE', deleted(second))
  await until(() => expect(answers()).toEqual([gone, gone]))
  expect(room().discord.messages.at(-1)?.channel).toBe(second.channel_id)
})

test('an answer that people have deleted stays so', async () => {
  const said = await asked('bench pack: 1S 300 LiPo')
  room().discord.messages.length = 0
  told('MESSAGE_UPDATE', edited(said, `${mentionOfBot} bench pack: 2S 450 LiPo`))
  told('MESSAGE_DELETE', deleted(said))
  await settled()
  expect(answers()).toEqual([])
  expect(room().logged()).not.toContain('not dealt with')
})
