// Plain words on Discord: asked by a command, with the kit and the last packs offered, or taken from somebody's message.

import { expect, test } from 'vitest'
import { commands } from '../../commands/index.ts'
import { firstLine } from '../support/discord-answers.ts'
import { askAbout, slash, typing } from '../support/discord-events.ts'
import { withDiscordRoom } from '../support/with-discord-room.ts'

const ephemeral = 64
const { room, answerTo } = withDiscordRoom({ commands })

const shownTo = async (...of: Parameters<typeof answerTo>) => (await answerTo(...of)).data
const ask = (question: string, more: object = {}) => shownTo(slash('ask', { question, ...more }))
const offered = async (words: string): Promise<string[]> =>
  (await shownTo(typing('ask', 'question', words))).choices.map(({ value }: { value: string }) => value)
const saved = () => answerTo(slash('kit save', { name: 'wren', pack: '3S 720 LiHV' }))

test('is answered for all, with what was said before', async () => {
  const first = await ask('what current for a 4S 1500 LiPo with a charger 1/2/3A?')
  expect([first.flags, firstLine(first)]).toEqual([undefined, expect.stringContaining('balance charge, 1 A')])
  expect(firstLine(await ask('and for a 2000mAh one?'))).toContain('balance charge, 2 A')
})

test("what turns out to be one's own is for them alone, as is what they ask so", async () => {
  await saved()
  const own = await ask('show my kit')
  expect([own.flags, own.embeds[0].description]).toEqual([ephemeral, expect.stringContaining('wren')])
  expect((await ask('show my kit', { private: false })).flags).toBeUndefined()
  expect((await ask('what current for a 4S 1500 LiPo?', { private: true })).flags).toBe(ephemeral)
  expect((await ask('what do you keep about me? export me')).flags).toBe(ephemeral)
})

test('names of the kit and the packs asked about last are offered', async () => {
  await saved()
  expect(await offered('how long for my wr')).toContain('how long for my wren')
  await ask('what current for a 4S 1500 LiPo?')
  expect(await offered('')).toEqual(['wren', '4S 1500mAh LiPo', '3S 720mAh LiHV'])
  expect(await offered('how long for a 4')).toContain('how long for a 4S 1500mAh LiPo')
  expect(await offered('how long')).toEqual(['how long 4S 1500mAh LiPo', 'how long 3S 720mAh LiHV'])
  expect(await offered('how long does a 4S 1500mAh LiPo take')).toEqual([
    'how long does a 4S 1500mAh LiPo take 3S 720mAh LiHV',
  ])
})

test("somebody's message is answered to whoever asks about it, and changes nothing", async () => {
  const answer = await shownTo(askAbout('what current for a 4S 1500 LiPo with a charger 1/2/3A?'))
  expect([answer.flags, firstLine(answer)]).toEqual([ephemeral, expect.stringContaining('balance charge, 1 A')])
  const dangerous = await shownTo(askAbout('my 3S 720 LiHV is puffed, which current?'))
  expect(dangerous.embeds[0].description).toContain('Do not charge, discharge or fly it')
  const fact = { rule: 'emergencyNumber', value: '555 0199' } as const
  await room().memory.house.change('discord:700000000000000003', [fact])
  await ask('what current for a 4S 1500 LiPo?')
  expect((await shownTo(askAbout('my pack is on fire'))).embeds[0].description).toContain('555 0199')
  await shownTo(askAbout('save my wren: 3S 720 LiHV'))
  await shownTo(askAbout('kit save name: wren pack: 3S 720 LiHV'))
  expect(await room().memory.kit.count({ scope: 'person', id: 'discord:700000000000000005' })).toBe(0)
  expect(firstLine(await shownTo(askAbout('  ')))).toContain('no words')
})
