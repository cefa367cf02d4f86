// What Matrix does.

import type { Surface } from './features.ts'

export const matrix: Surface = {
  plain: ['behind the prefix, by a mention, or in a direct room', 'e2e/matrix/rooms', 'in plain words'],
  told: ['the command with its details, typed', 'contract/same-everywhere', 'answers every example'],
  completed: 'no such thing',
  layers: ['by reactions, or a word in reply', 'e2e/matrix/rooms', 'a reaction opens a layer'],
  offered: ['by a reaction with its number', 'e2e/matrix/rooms', 'a number asks what an answer suggests'],
  further: ['by a reply, or in its thread', 'e2e/matrix/rooms', 'a reply to an answer changes one thing'],
  pictures: ['images and files, encrypted where the room is', 'e2e/matrix/encryption', 'a chart comes as an encrypted'],
  slow: ['given when it is there', 'e2e/matrix/rooms', 'two questions at once'],
  edited: ['edits the answer; a worse verdict is said anew', 'e2e/matrix/edits', 'leaves the verdict edits'],
  deleted: ['takes its answer along', 'e2e/matrix/edits', 'takes its answer and its picture'],
  again: ['answered once', 'e2e/matrix/kills', 'answers it once'],
  away: ['read back for a week; no plain go when it is late', 'e2e/matrix/late', 'an hour late'],
  flood: ['one line, then silence; others go on', 'e2e/matrix/flood', 'a flood is answered within limits'],
  others: ['left alone', 'e2e/matrix/rooms', 'notices and mentions of others'],
  encrypted: [
    'answered, encrypted; recovered where all is lost',
    'e2e/matrix/recovery',
    'after its data folder is lost',
  ],
  own: ['goes to a direct room', 'e2e/matrix/private', 'is opened for an export'],
  reminders: ['a message that calls its person', 'e2e/matrix/noticeboard', 'set before a kill'],
  lacking: ['told to the asker in private', 'e2e/matrix/rooms', 'where it may not speak'],
  moderators: ['who may remove messages of others', 'e2e/matrix/rooms', 'the creator of a version 12 room'],
  cards: ['a message, pinned, edited in place', 'e2e/matrix/noticeboard', 'is pinned beside what others pinned'],
  alerts: ['a message with a link', 'e2e/matrix/moderators', 'an emergency is told'],
  wrong: ['struck; who read it is mentioned', 'e2e/matrix/moderators', 'strikes an answer'],
  limits: ['waits as long as it is told, sends once', 'contract/matrix-weather', 'asks to wait long'],
  faults: ['tries again for ten minutes, sends once', 'contract/matrix-weather', 'through a storm of 502'],
  silence: ['asks again, answers once', 'contract/matrix-weather', 'with what is heard'],
  stop: ['finishes what it has begun', 'e2e/matrix/outages', 'a clean stop answers what it heard'],
}
