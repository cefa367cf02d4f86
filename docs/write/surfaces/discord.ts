// What Discord by its gateway does.

import type { Surface } from './features.ts'

export const discord: Surface = {
  plain: ['by `/ask`, a mention, or a direct message', 'contract/discord-ask', 'is answered for all'],
  told: ['by slash commands', 'contract/discord-gateway', 'knows subcommands'],
  completed: ['names of the kit and the last packs', 'contract/discord-ask', 'names of the kit'],
  layers: ['by buttons, for whoever taps alone', 'contract/discord-gateway', 'answers whoever presses it in private'],
  offered: ['by buttons', 'contract/discord-noticeboard', 'has a link and buttons'],
  further: ['by a reply, or the button that asks for words', 'contract/discord-further', 'the button under an answer'],
  pictures: ['attached; a file to its asker alone', 'contract/discord-gateway', 'which may bring a file'],
  slow: ['promised after two seconds, then given', 'contract/discord-gateway', 'takes long is promised'],
  edited: [
    'edits the answer; a worse verdict is said anew',
    'contract/discord-edits',
    'an edit edits the answer, once',
  ],
  deleted: ['takes its answer along', 'contract/discord-edits', 'takes its answer along'],
  again: ['answered once', 'contract/discord-gateway', 'comes again after a reconnect'],
  away: ['answered when the connection is back', 'contract/discord-gateway', 'while the connection was cut'],
  flood: ['one line, then silence; others go on', 'contract/discord-flood', 'a flood is answered within limits'],
  others: ['left alone', 'contract/discord-gateway', 'is not taken from talk among people'],
  encrypted: 'no such thing',
  own: ['for its asker alone, unless they say otherwise', 'contract/discord-private', 'is for the asker alone, and'],
  reminders: ['a message that calls its person', 'contract/discord-noticeboard', 'a reminder calls its person'],
  lacking: [
    'told to the asker in private, to moderators once a day',
    'contract/discord-lacking',
    'by name of permission',
  ],
  moderators: ['who may manage messages or the server', 'contract/discord-gateway', 'knows moderators by their role'],
  cards: ['a message, pinned, edited in place', 'contract/discord-noticeboard', 'it is pinned, edited in place'],
  alerts: ['a message with a link', 'contract/discord-alerts', 'a mention is linked'],
  wrong: ['struck; who read it is mentioned', 'contract/discord-marking', 'it is struck under a line'],
  limits: [
    'waits as long as it is told, sends once',
    'contract/discord-weather',
    'come after a minute, and not before',
  ],
  faults: ['tries again for ten minutes, sends once', 'contract/discord-weather', 'through a storm of 502'],
  silence: ['connects anew, resumes, answers once', 'contract/discord-weather', 'half-open is noticed'],
  stop: ['finishes what is under way', 'contract/discord-gateway', 'finishes the answers in flight'],
}
