// What an answer in a room shows for people to type carries the prefix, and nothing else does.

import { expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { plainText } from '../../../src/matrix/messages/blocks.ts'
import { createHint } from '../../../src/matrix/messages/hints.ts'
import { renderReply } from '../../../src/matrix/messages/render.ts'
import { askingOf } from '../../support/ask.ts'

const { memory, ask, assistant } = await askingOf(commands, { clock: () => new Date('2026-06-01T12:00:00Z') })
const hint = createHint('!charge', assistant.registry)
const hinted = (text: string): string => plainText(hint.blocks([{ lines: [[text]] }]))

it.each([
  [
    'Save a pack with: kit save name: wren pack: 3S 720 LiHV',
    'Save a pack with: !charge kit save name: wren pack: 3S 720 LiHV',
  ],
  ['To cancel: remind cancel code: k7f3', 'To cancel: !charge remind cancel code: k7f3'],
  ['"history" shows who changed what.', '"!charge history" shows who changed what.'],
  ['To take it back: undo', 'To take it back: !charge undo'],
  ['The C-rate (lesson read c-rate): 0 of 3 right', 'The C-rate (!charge lesson read c-rate): 0 of 3 right'],
  ['More: help charging · help club', 'More: !charge help charging · !charge help club'],
])('%s', (text, expected) => expect(hinted(text)).toBe(expected))

it.each(['It takes time: current falls at the end.', 'Shall I do this? Saves a pack. Here: wren, 3S 720mAh LiHV.'])(
  'leaves alone: %s',
  text => expect(hinted(text)).toBe(text),
)

it('is said of each question that help shows', async () => {
  const { body } = renderReply(await ask('help'), { hint })
  expect(body.match(/!charge /g)).toHaveLength(6)
  expect(body).toContain('learning: !charge why')
})

it('is said of what can be tried instead, once', async () => {
  for (const question of ['current pack: 3S', 'fdjk hrm', 'kit save name: wren pack: nonsense']) {
    const { body } = renderReply(await ask(question), { hint })
    expect(body).not.toContain('!charge !charge')
  }
  expect(renderReply(await ask('time pack: 3S 720 LiHV current: 0A'), { hint }).body).toMatch(/Try: !charge /)
  await memory.close()
})
