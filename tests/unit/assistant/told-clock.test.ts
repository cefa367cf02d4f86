// The clock of a club in words: what tells it, and what only sounds like it.

import { expect, it } from 'vitest'
import { clockTold } from '../../../src/assistant/naming/told-clock.ts'
import { bestCover, candidatesOf } from '../../../src/language/candidates/index.ts'

const told = (text: string) => clockTold(text, bestCover(candidatesOf(text)))

it.each([
  ['our club is in Europe/Vienna', 'Europe/Vienna'],
  ['we are on Vienna time', 'Vienna'],
  ['we fly by New York time here', 'New York'],
  ['set the club clock to America/Argentina/Salta', 'America/Argentina/Salta'],
  ['our field is on UTC+2', 'UTC+2'],
])('%s', (text, zone) => {
  expect(told(text)).toBe(zone)
})

it.each([
  'are we on Vienna time?',
  'is our club in Europe/Vienna',
  'we are on lunch time',
  'we are on summer time',
  'my aunt lives in Europe/Vienna',
  'we meet at 13:20 Vienna time, by Vienna time',
  'our charger is an UTC charger',
  'we charge at 2A on a 3S 720',
])('%s: none', text => {
  expect(told(text)).toBeUndefined()
})
