// Reminders for a charge: one to be with it, one to check whether it has ended; set, listed and cancelled.

import { randomInt, randomUUID } from 'node:crypto'
import { optional, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { longestCharge_s } from '../../src/assistant/due/reminder.words.ts'
import { figure } from '../../src/assistant/quantified.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { Problem } from '../../src/ground/problem.ts'
import { stepped_s } from '../../src/ground/show.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { questionKind } from '../../src/language/kinds/text-kinds.ts'
import { wordsKind } from '../../src/language/kinds/value-kind.ts'
import { clockKind, durationKind } from '../../src/language/kinds/values.ts'
import type { Clock } from '../../src/language/quantities/clock.ts'
import { clockIn } from '../../src/language/quantities/zoned-clock.ts'
import type { Reminder } from '../../src/memory/reminder.ts'
import { waitUntil, zonesOf } from './reminder-clock.ts'
import { cancelsAll, needsTime, noCode, onlyAnswers, outsideRange, tooMany } from './reminder-problems.words.ts'

/** Two for each of ten charges. */
const mostReminders = 20
const limits_s = { least: 60, most: 366 * 24 * 3600 }
/**
 * When to ask whether somebody is still with the charge: halfway, after a quarter of an hour at most, and not in
 * a wait so short that both would come together. Our own choice, not a rule of the trade.
 */
const stayAfter_s = 15 * 60
const shortestForStay_s = 10 * 60

type Wait = Pick<Reminder, 'about' | 'low_s' | 'high_s' | 'zone'>

interface SetReminder {
  readonly wait: Wait
  /** Absent where both would come together. */
  readonly stay_s: number | undefined
  readonly code: string
  readonly isDirect: boolean
  /** Where it is asked nobody else reads along, so that it needs no message of its own. */
  readonly isOwn: boolean
  /** What the clock shows then; absent where none is known. */
  readonly clock: Clock | undefined
  /** Of the two times of day that it may be the sooner was taken. */
  readonly isOpen: boolean
}

interface Result {
  /** The answer to the time question that it is for. */
  readonly timed: Reply | undefined
  /** None is set for a charge that must not be done. */
  readonly reminder: SetReminder | undefined
}

export const remindMe = service({
  name: 'remind me',
  takes: {
    in: optional(durationKind),
    at: optional(clockKind),
    now: optional(clockKind),
    place: optional(choiceKind('place', ['here', 'direct'])),
    instead: optional(choiceKind('instead', ['last'])),
    for: optional(questionKind),
  },
  examples: [
    'remind me in: 45min',
    'remind me at: 13:20 now: 12:40',
    'remind me place: direct for: time pack: 3S 720 LiHV current: 1A',
  ],
  changes: true,
  run: async ({ in: delay_s, at, now: shown, place: chosen, instead, for: question }, context): Promise<Result> => {
    const { now } = context
    if (!now || !context.speaksFirst) throw onlyAnswers()
    const isAt = at?.hour !== undefined
    if ([delay_s !== undefined, isAt, question !== undefined].filter(Boolean).length !== 1) throw needsTime()
    const timed = question === undefined ? undefined : await askTime(question, context)
    if (timed?.verdict === 'do not charge') return { timed, reminder: undefined }
    const last = await lastOf(context)
    const zones = zonesOf(shown, last, context)
    const { zone = zones[0], wait_s = delay_s ?? 0, isOpen = false } = isAt ? waitUntil(at, zones, now) : {}
    const wait = { ...(timed ? waitOf(timed) : { about: '', low_s: wait_s, high_s: wait_s }), zone }
    if (wait.low_s < limits_s.least || wait.low_s > limits_s.most)
      throw outsideRange(wait.low_s, limits_s.least, limits_s.most)
    if (instead && last) await context.memory.reminders.cancel(context.asker.id, last.code)
    return { timed, reminder: { ...(await setReminder(wait, chosen ?? 'direct', now, context)), isOpen } }
  },
  restsOn: ({ timed }) => timed,
  figures: ({ reminder }) => [
    reminder && figure.duration('remindIn', reminder.wait.low_s),
    figure.duration('stayIn', reminder?.stay_s),
  ],
})

/** Of those that are still to come, the one that was set last. */
async function lastOf({ asker, memory: { reminders } }: Context): Promise<Reminder | undefined> {
  return (await reminders.of(asker.id)).toSorted((a, b) => b.setAt.getTime() - a.setAt.getTime())[0]
}

/** Throws a Problem where the person has too many already. */
async function setReminder(
  wait: Wait,
  channel: Reminder['channel'],
  now: Date,
  { asker, place, memory }: Context,
): Promise<Omit<SetReminder, 'isOpen'>> {
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
  const both = wait.low_s >= shortestForStay_s && wait.low_s <= longestCharge_s
  const outcome = await memory.reminders.add(both ? [stay, end] : [end], mostReminders)
  if (outcome === 'full') throw tooMany(mostReminders)
  return {
    wait,
    stay_s: both ? stay_s : undefined,
    code,
    isDirect: channel === 'direct' && !place.direct,
    isOwn: place.direct,
    clock: wait.zone === undefined ? undefined : clockIn(wait.zone, end.dueAt, now),
  }
}

/** Throws a Problem where it is no time question that can be answered. */
async function askTime(question: string, { ask }: Context): Promise<Reply> {
  const reply = await ask('time', question)
  if (reply.fault !== undefined) throw new Error(`the time was not answered: ${reply.fault}`)
  if (reply.problem) throw new Problem(reply.problem)
  return reply
}

function waitOf({ figures, question = '' }: Reply): Omit<Wait, 'zone'> {
  const time = figures.find(({ key }) => key === 'chargeTime')
  // What speaks of a danger alone names no time.
  if (!time) throw needsTime()
  const { value, low = value, high = value } = time
  return { about: question, low_s: stepped_s(low, Math.floor), high_s: stepped_s(high, Math.ceil) }
}

const later = (now: Date, after_s: number): Date => new Date(now.getTime() + after_s * 1000)

/** Without letters and digits that are taken for one another. */
const newCode = (): string => Array.from({ length: 4 }, () => 'abcdefghjkmnpqrstuvwxyz23456789'[randomInt(31)]).join('')

export const remindList = service({
  name: 'remind list',
  takes: {},
  examples: ['remind list'],
  notStanding: true,
  run: async (_, { asker, memory, now }) => ({ reminders: await memory.reminders.of(asker.id), now }),
  figures: ({ reminders }) => [figure.count('reminders', reminders.length)],
})

const codeKind = wordsKind({
  name: 'code',
  example: 'k7f3',
  read: text => {
    const code = text.trim().toLowerCase()
    if (/^[a-z2-9]{4}$/.test(code)) return code
    throw noCode(text)
  },
})

export const remindCancel = service({
  name: 'remind cancel',
  takes: { code: optional(codeKind) },
  examples: ['remind cancel', 'remind cancel code: k7f3'],
  changes: true,
  confirm: async ({ code }, { asker, memory }) => {
    const codes = new Set((await memory.reminders.of(asker.id)).map(reminder => reminder.code))
    return code === undefined && codes.size > 1 ? cancelsAll(codes.size) : undefined
  },
  run: async ({ code }, { asker, memory }) => ({ cancelled: await memory.reminders.cancel(asker.id, code) }),
})
