// What the clocks of a time zone show, and when they show a time next, also where they are put on or back meanwhile.

import { type Clock, isOpen } from './clock.ts'

const minute_ms = 60_000
const hour_ms = 60 * minute_ms
const day_ms = 24 * hour_ms

/** For each moment what its clocks show, as milliseconds since 1970 on that clock. */
function shownIn(zone: string): (at_ms: number) => number {
  const format = new Intl.DateTimeFormat('en', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  })
  return at_ms => {
    const part = new Map(format.formatToParts(at_ms).map(({ type, value }) => [type, Number(value)]))
    const [year, month, day, hour, minute, second] = parts.map(name => part.get(name) ?? 0)
    return Date.UTC(year ?? 0, (month ?? 0) - 1, day, hour, minute, second, at_ms % 1000)
  }
}
const parts = ['year', 'month', 'day', 'hour', 'minute', 'second'] as const

/** The next moment at which the clocks of the zone show that time; of which half of the day it is, where that is open, is the sooner. */
export function nextIn(zone: string, clock: Clock, now: Date): Date {
  const shown = shownIn(zone)
  const today_ms = Math.floor(shown(now.getTime()) / day_ms) * day_ms
  const mostDays = 8
  const midnights = Array.from({ length: mostDays + 1 }, (_, days) => today_ms + days * day_ms)
  const moments = midnights
    .filter(midnight_ms => isOn(clock.day, midnight_ms, today_ms))
    .flatMap(midnight_ms => hoursOf(clock).map(hour => midnight_ms + hour * hour_ms + (clock.minute ?? 0) * minute_ms))
    .flatMap(shown_ms => momentsOf(shown_ms, shown))
  return new Date(Math.min(...moments.filter(at_ms => at_ms > now.getTime())))
}

/** "Today" and "tonight" are no more than the next such time. */
function isOn(day: Clock['day'], midnight_ms: number, today_ms: number): boolean {
  if (day === undefined || day === 'today' || day === 'tonight') return true
  if (day === 'tomorrow') return midnight_ms === today_ms + day_ms
  return weekday.format(midnight_ms).toLowerCase() === day
}
const weekday = new Intl.DateTimeFormat('en', { timeZone: 'UTC', weekday: 'long' })

function hoursOf(clock: Clock): readonly number[] {
  const { hour = 0, day } = clock
  if (!isOpen(clock)) return [hour]
  return day === 'tonight' ? [hour + 12] : [hour, (hour + 12) % 24]
}

/** Two where the clocks are put back over it; where they are put on over it, as long after as it would have been. */
function momentsOf(shown_ms: number, shown: (at_ms: number) => number): readonly number[] {
  const [before, after] = [-day_ms, day_ms].map(near_ms => {
    const at_ms = shown_ms + near_ms
    return shown_ms - (shown(at_ms) - at_ms)
  }) as [number, number]
  const showing = [before, after].filter(at_ms => shown(at_ms) === shown_ms)
  return showing.length > 0 ? showing : [before]
}

/** What they show then; the day too where it is the one after `now`. */
export function clockIn(zone: string, at: Date, now: Date): Clock {
  const shown = shownIn(zone)
  const [at_ms, now_ms] = [shown(at.getTime()), shown(now.getTime())]
  const days = Math.floor(at_ms / day_ms) - Math.floor(now_ms / day_ms)
  const minutes = Math.floor((at_ms % day_ms) / minute_ms)
  return { ...(days === 1 && { day: 'tomorrow' }), hour: Math.floor(minutes / 60), minute: minutes % 60 }
}

/** Zones whose clocks show that time now: two where it may be of either half of the day. */
export const zonesShowing = (clock: Clock, now: Date): readonly string[] =>
  hoursOf(clock).map(hour => {
    const shown_min = hour * 60 + (clock.minute ?? 0)
    const utc_min = now.getUTCHours() * 60 + now.getUTCMinutes()
    // Between twelve hours behind and twelve before.
    const ahead_min = ((shown_min - utc_min + 36 * 60) % (24 * 60)) - 12 * 60
    const [hours, minutes] = [Math.floor(Math.abs(ahead_min) / 60), Math.abs(ahead_min) % 60]
    const padded = [hours, minutes].map(part => String(part).padStart(2, '0'))
    return `${ahead_min < 0 ? '-' : '+'}${padded.join(':')}`
  })
