// A few tiny commands with which a surface can be tested before it meets the real ones.

import { optional, required } from '../../src/assistant/command.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'
import { type Plain, plainCommand } from './plain-command.ts'

export const textKind: ValueKind<string> = {
  name: 'text',
  example: '3S 720 LiHV',
  read: text => {
    if (text !== 'nonsense') return { value: text, assumed: [({ say }) => say`the pack rests at 3.8 V per cell`] }
    throw new Problem({
      what: ({ say }) => say`That is no pack.`,
      token: text,
      expected: ({ say }) => say`a pack`,
      example: '3S 720 LiHV',
    })
  },
  write: value => value,
  complete: prefix => Array.from({ length: 40 }, (_, at) => `${prefix}${at}S 720 LiHV`),
}

const answer = (pack: string): Plain<Answer> => ({
  verdict: 'go with care',
  headline: `Set 0.5 A for ${pack}.`,
  figures: [
    { key: 'setCurrent', label: 'current to set', value: 0.5, unit: 'A', text: '0.5 A' },
    { key: 'cutoffPerCell', label: 'cutoff per cell', value: 4.35, unit: 'V', text: '4.35 V' },
  ],
  working: ['0.72 Ah × 1C = 0.72 A, so 0.5 A (common practice)'],
  cautions: [
    { key: 'lihv', text: 'Use 4.35 V only for cells that say LiHV.' },
    { key: 'stay', text: 'Stay with the pack until the charge has ended.' },
  ],
  followUps: [{ label: 'One step up', question: 'bench pack: 4S 850 LiHV' }],
})

const pack = {
  takes: { pack: required(textKind), from: optional(textKind) },
  about: { pack: 'the pack to charge', from: 'where the charge starts' },
  as: { pack: '$' },
}
const nothing = { takes: {}, about: {} }

export const bench = plainCommand({
  name: 'bench',
  summary: 'What to set on the charger',
  ...pack,
  examples: ['bench pack: 3S 720 LiHV'],
  answer: ({ pack }) => answer(pack),
})

export const trayAdd = plainCommand({
  name: 'tray add',
  summary: 'Puts a pack on the tray',
  ...pack,
  examples: ['tray add pack: 3S 720 LiHV'],
  changes: true,
  answer: ({ pack }, { asker }) => ({ ...answer(pack), headline: `${asker.moderates ? 'Put' : 'Left'} ${pack}.` }),
})

export const trayList = plainCommand({
  name: 'tray list',
  summary: 'Lists the tray',
  ...nothing,
  examples: ['tray list'],
  answer: () => ({
    headline: 'The tray is empty.',
    working: ['nothing was put'],
    cautions: [{ key: 'x', text: 'Stay.' }],
  }),
})

export const deadly = plainCommand({
  name: 'deadly',
  summary: 'Refuses',
  ...nothing,
  examples: ['deadly'],
  answer: () => ({
    verdict: 'do not charge',
    headline: 'Leave it.',
    cautions: [{ key: 'x', text: 'Leave it alone.' }],
  }),
})

/** Hands out a file, but only where nobody else reads it. */
export const trayExport = plainCommand({
  name: 'tray export',
  summary: 'Hands the tray out',
  ...nothing,
  examples: ['tray export'],
  answer: (_, { place }) => ({
    headline: place.direct ? 'Here it is.' : 'Not in front of others.',
    documents: place.direct ? [{ name: 'tray.json', mediaType: 'application/json', text: '{}' }] : [],
    cautions: [{ key: 'stay', text: 'Stay with the pack until the charge has ended.' }],
  }),
})

/** Answers when the test lets it. */
export function gatedCommand() {
  const { promise: gate, resolve: open } = Promise.withResolvers<void>()
  const command = plainCommand({
    name: 'gated',
    summary: 'Waits',
    ...pack,
    examples: ['gated pack: 3S 720 LiHV'],
    answer: async ({ pack }) => {
      await gate
      if (pack === 'odd')
        throw new Problem({
          what: ({ say }) => say`Odd.`,
          expected: ({ say }) => say`an even one`,
          example: '2S 450 LiPo',
        })
      return answer(pack)
    },
  })
  return { command, open }
}

/** Fails as an HTTP client does, with a token in every corner of the error. */
export const broken = (secret: string) =>
  plainCommand({
    name: 'broken',
    summary: 'Fails',
    ...nothing,
    examples: ['broken'],
    answer: () => {
      throw leakyError(secret)
    },
  })

export const leakyError = (secret: string): Error =>
  Object.assign(new Error(`POST https://discord.com/api/v10/interactions/123456/${secret}/callback failed`), {
    url: `https://discord.com/api/v10/webhooks/123456/${secret}`,
    requestBody: { json: { token: secret } },
  })
