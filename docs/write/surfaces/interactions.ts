// What Discord by HTTP does: interactions alone, for messages come by the gateway.

import type { Surface } from './features.ts'

const same = 'contract/discord-doors'

export const interactions: Surface = {
  plain: ['by `/ask`', same, 'plain words'],
  told: ['by slash commands', same, '> a command'],
  completed: ['names of the kit and the last packs', same, 'what is typed'],
  layers: ['by buttons, for whoever taps alone', same, 'a layer'],
  offered: ['by buttons', same, 'what is offered'],
  further: ['by the button that asks for words', same, 'words behind an answer'],
  threads: 'no such thing',
  hints: 'no such thing',
  pictures: ['attached', 'contract/discord-endpoint', 'has a picture'],
  slow: ['promised after two seconds, then given', 'contract/discord-endpoint', 'takes long is promised'],
  edited: 'no such thing',
  deleted: 'no such thing',
  again: ['refused', 'contract/discord-endpoint', 'good for a second time'],
  away: 'no such thing',
  late: 'no such thing',
  flood: ['one line each time, to its asker alone', 'contract/discord-flood', 'is never left without a word'],
  others: ['what is not signed is refused', 'contract/discord-endpoint', 'is refused where it'],
  encrypted: 'no such thing',
  verified: 'no such thing',
  own: ['for its asker alone, unless they say otherwise', same, 'what is their own'],
  reminders: ['as by the gateway, with the bot’s token', 'contract/discord-noticeboard', 'a reminder calls its person'],
  lacking: ['a card says what it lacks', 'contract/discord-noticeboard', 'a post without permission'],
  moderators: ['who may manage messages or the server', same, '> a moderator'],
  cards: ['as by the gateway, with the bot’s token', 'contract/discord-noticeboard', 'it is pinned, edited in place'],
  alerts: ['a message with a link to the answer', 'contract/discord-alerts', 'of a slash command the answer'],
  wrong: 'no such thing',
  digest: ['as by the gateway, with the bot’s token', 'unit/assistant/digest', 'comes a week after it was asked for'],
  facts: ['where a refusal or an emergency needs them', 'unit/assistant/club-facts', 'in an emergency: whom'],
  moved: 'no such thing',
  limits: ['waits as long as it is told, sends once', 'contract/discord-weather', 'what was promised by HTTP'],
  faults: ['tries again for ten minutes, sends once', 'contract/discord-weather', 'what was promised by HTTP'],
  silence: ['a client that trickles is cut off', 'e2e/process/slow-clients', 'shows a client the door'],
  stop: ['finishes what is under way', 'contract/discord-endpoint', 'answers in flight before it stops'],
}
