// What the room in the terminal does.

import type { Surface } from './features.ts'

export const room: Surface = {
  plain: ['answered below it', 'e2e/process/room', 'answers three questions of the club'],
  told: ['the command with its details, typed', 'contract/same-everywhere', 'answers every example'],
  completed: ['by Tab: commands, details, values', 'unit/room/complete', 'is commands first'],
  layers: ['typed: `why`, `figures`, `care`, `more`', 'unit/room/render-text', 'opens a layer of it'],
  offered: ['its label, typed', 'unit/assistant/follow-ups', 'below %j is taken up by'],
  further: ['typed, as the next question', 'unit/assistant/follow-ups', 'from %j'],
  pictures: ['files in the data folder, told by path', 'unit/room/files', 'are told by path'],
  slow: 'no such thing',
  edited: 'no such thing',
  deleted: 'no such thing',
  again: 'no such thing',
  away: 'no such thing',
  flood: 'no such thing',
  others: 'no such thing',
  encrypted: 'no such thing',
  own: ['shown: nobody else is there', 'contract/same-everywhere', 'answers every example'],
  reminders: ['printed when it is due', 'unit/commands/remind', 'asks first whether somebody is with'],
  lacking: ['a folder that is closed ends it with one plain line', 'e2e/process/room', 'a data folder that cannot'],
  moderators: ['whoever sits at the terminal', 'e2e/process/room', 'puts up a card'],
  cards: ['printed, and printed again when it changes', 'e2e/process/room', 'puts up a card'],
  alerts: ['printed, where one was asked for', 'e2e/process/room', 'puts up a card'],
  wrong: 'no such thing',
  limits: 'no such thing',
  faults: 'no such thing',
  silence: 'no such thing',
  stop: ['ends with its input, after the last answer', 'e2e/process/room', 'answers three questions of the club'],
}
