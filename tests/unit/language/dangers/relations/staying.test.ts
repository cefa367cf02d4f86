// Whoever says that they stay beside it leaves nothing alone; one word of sleep, of leaving or of others, and that is open again.

import { expect, test } from 'vitest'
import { isKept, isOfKnowing, isStaying } from '../../../../../src/language/dangers/relations/attended.ts'
import { isDoneByChild } from '../../../../../src/language/dangers/relations/rooms.ts'
import { told } from './told.ts'

test.each<readonly [string, boolean]>([
  ['I sit next to it with my breakfast', true],
  ['I am off this week and cook right beside it', true],
  ['we stay with them the whole time', true],
  ['I stand beside the charger', true],
  ['I am watching it', true],
  ['I sleep next to it', false],
  ['I sit next to it until the shop opens', false],
  ['my son sits next to it', false],
  ['I used to stay with them', false],
  ['I never sit beside it', false],
  ['I do not stay with it', false],
  ['I sit next to it, then I go to bed', false],
  ['I charge it and read', false],
  ['I cook beside the garden, it charges', false],
])('%s: %s', (text, stays) => expect(isStaying(told(text))).toBe(stays))

test.each<readonly [string, boolean]>([
  ['my son does it after school', true],
  ['the kids charge their packs themselves', true],
  ['my daughter does it with me', false],
  ['my son does the building, I charge', false],
  ['my son never charges them', false],
  ['my wife does it', false],
])('%s: done by a child %s', (text, is) => expect(isDoneByChild(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['Jana stays at the table the whole time', true],
  ['my father sits beside it, I fly', true],
  ['I am at the flight line, she is sitting with the packs', true],
  ['the pack stays on the bench with the charger', false],
  ['nobody stays with it', false],
  ['my son stays with it', false],
  ['the dog sits beside it', false],
  ['she sits with it till she goes to bed', false],
  ['who stays with it', false],
  ['Jana never stays with it', false],
  ['Jana stays home', false],
  ['my bag stays at the table, I go shopping', false],
  ['the laptop stays at the table and watches', false],
])('%s: kept by somebody %s', (text, is) => expect(isKept(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['what does 2S mean, nobody in my class knows', true],
  ['no one here told me', true],
  ['nobody knows that I leave it overnight', false],
  ['nobody is home', false],
  ['nobody knows when I am back', false],
  ['nobody is there, he said', false],
  ['nobody is there who knows', false],
  ['how many amps', false],
])('%s: nobody who would know %s', (text, is) => expect(isOfKnowing(told(text))).toBe(is))
