// Sets reminders for a charge that starts now: one to be with it, one to check whether it has ended.

import { randomInt, randomUUID } from 'node:crypto'
import type { Context } from '../../src/assistant/context.ts'
import { defineCommand, optional } from '../../src/assistant/old-command.ts'
import type { Answer, Reply } from '../../src/assistant/reply.ts'
import type { Caution } from '../../src/cautions/cautions.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { Problem } from '../../src/ground/problem.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { questionKind } from '../../src/language/kinds/text-kinds.ts'
import { durationKind } from '../../src/language/kinds/values.ts'
import type { Reminder } from '../../src/memory/stores/reminder.ts'
import { figuresIn } from '../shared/figure.ts'
import { channelWords } from './reminder-words.ts'

/** Two for each of ten charges. */
const mostReminders = 20
const wait_s = { least: 60, most: 24 * 3600 }
/**
 * When to ask whether somebody is still with the charge: halfway, after a quarter of an hour at most, and not in
 * a wait so short that both would come together. Our own choice, not a rule of the trade.
 */
const stayAfter_s = 15 * 60
const shortestForStay_s = 10 * 60

interface Wait {
  readonly about: string
  readonly low_s: number
  readonly high_s: number
}

export const remindMe = defineCommand({
  name: 'remind me',
  summary: 'Reminds you to check a charge that starts now.',
  options: {
    in: optional(durationKind, { description: 'after so long', phrase: text => `in ${text}` }),
    place: optional(choiceKind('place', ['here', 'direct']), {
      description: 'here, or in a direct message; the same way as you ask when not said',
      phrase: text => (text === 'here' ? 'here' : 'in a direct message'),
    }),
    for: optional(questionKind, {
      description:
        'or a time question, for when it is estimated to end; takes all that follows, so it stands last',
    }),
  },
  examples: ['remind me in: 45min', 'remind me place: direct for: time pack: 3S 720 LiHV current: 1A'],
  changes: true,
  answer: async ({ in: delay_s, place: chosen, for: question }, context) => {
    const { asker, place, memory, now, show } = context
    if (!now || !context.speaksFirst) throw cannotSpeakFirst
    if ((delay_s === undefined) === (question === undefined)) throw oneOfThem
    const asked = question === undefined ? undefined : await askTime(question, context)
    if (asked && asked.verdict === 'do not charge') return noReminder(asked)
    const wait = asked ? waitOf(asked) : { about: '', low_s: delay_s ?? 0, high_s: delay_s ?? 0 }
    if (wait.low_s < wait_s.least || wait.low_s > wait_s.most) throw outsideRange(wait.low_s, context)

    const channel = chosen ?? (place.direct ? 'direct' : 'here')
    const code = newCode()
    const end: Reminder = {
      ...wait,
      id: randomUUID(),
      code,
      person: asker.id,
      place: place.id,
      channel,
      kind: 'end',
      setAt: now,
      dueAt: later(now, wait.low_s),
    }
    const stay_s = Math.min(stayAfter_s, wait.low_s / 2)
    const stay: Reminder = { ...end, id: randomUUID(), kind: 'stay', dueAt: later(now, stay_s) }
    const both = wait.low_s >= shortestForStay_s
    const outcome = await memory.reminders.add(both ? [stay, end] : [end], mostReminders)
    if (outcome === 'full') throw tooMany

    const figure = figuresIn(show)
    const between = both ? `, and in ${show.duration(stay_s)} whether you are still with it` : ''
    return {
      headline: `I remind you ${channelWords(channel, context)} in ${show.duration(wait.low_s)} to check the charge${between}.`,
      figures: [
        figure.duration('remindIn', 'reminder in', wait.low_s),
        ...(both ? [figure.duration('stayIn', 'still with it, in', stay_s)] : []),
      ],
      working: [
        wait.high_s > wait.low_s
          ? `It may need ${show.duration(wait.low_s)} to ${show.duration(wait.high_s)}: the reminder comes at the earliest end, so check then, and again.`
          : 'The time is the one that you gave.',
        'If the way that you chose is closed to me, the reminder comes by the other one.',
        `To cancel: remind cancel code: ${code}`,
      ],
      cautions: [noSubstitute, ...(asked ? asked.cautions : cautionsFor({}))],
      assumed: ['the charge starts now'],
    }
  },
})

const noSubstitute: Caution = {
  key: 'noSubstitute',
  text: 'A reminder does not watch the pack, and may come late or not at all: stay with it.',
}

/** Throws a Problem where it is no time question that can be answered. */
async function askTime(question: string, { ask }: Context): Promise<Reply> {
  const reply = await ask('time', question)
  if (reply.fault !== undefined) throw new Error(`the time was not answered: ${reply.fault}`)
  if (reply.problem) throw new Problem(reply.problem)
  return reply
}

function waitOf({ figures, question = '' }: Reply): Wait {
  const time = figures.find(({ key }) => key === 'chargeTime')
  if (!time) throw new Error('the answer to a time question names no time')
  const { value, low = value, high = value } = time
  return { about: question, low_s: Math.ceil(low), high_s: Math.ceil(high) }
}

function noReminder({ headline, working, cautions }: Reply): Answer {
  return {
    verdict: 'do not charge',
    headline: `No reminder is set, as this must not be charged so. ${headline}`,
    working,
    cautions,
  }
}

const later = (now: Date, wait_s: number): Date => new Date(now.getTime() + wait_s * 1000)

/** Without letters and digits that are taken for one another. */
const newCode = (): string =>
  Array.from({ length: 4 }, () => 'abcdefghjkmnpqrstuvwxyz23456789'[randomInt(31)]).join('')

const oneOfThem = new Problem({
  what: 'I need to know when to remind you.',
  expected: 'either "in" and how long, or "for" and a time question',
  example: 'remind me in: 45min',
})

const cannotSpeakFirst = new Problem({
  what: 'Here I can only answer, so I cannot remind you.',
  expected: 'a timer of your own, such as that of the charger or a phone',
  example: 'time pack: 3S 720 LiHV current: 1A',
})

const tooMany = new Problem({
  what: `You have ${mostReminders} reminders to come; no more fit.`,
  expected: 'one to cancel first',
  example: 'remind list',
})

const outsideRange = (asked_s: number, { show }: Context): Problem =>
  new Problem({
    what: `I do not remind anybody in ${show.duration(asked_s)}.`,
    token: durationKind.write(asked_s),
    expected: `${show.duration(wait_s.least)} to ${show.duration(wait_s.most)}`,
    example: 'remind me in: 45min',
  })
