// The headlines of an answer about time.

import { whoLimits } from '../../src/cautions/refusals.ts'
import type { Setting } from '../../src/charging/setting/old-setting.ts'
import type { TimedCharge } from '../../src/charging/setting/old-timed-charge.ts'
import type { Target } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Show } from '../../src/ground/show.ts'
import { careWords } from './setting-words.ts'

/** How long it takes; for a current above a limit first that it must not be set, and what to set instead. */
export function timeWords(
  timed: TimedCharge,
  setting: Setting,
  request: { readonly pack: Pack; readonly target: Target },
  show: Show,
): string {
  const { charge, time_s, current_A, above, verdict } = timed
  const at = show.current(current_A)
  const takes = `about ${show.duration(charge.duration_s)} (${show.duration(time_s.low)} to ${show.duration(time_s.high)})`
  if (above && verdict === 'do not charge') {
    const unless = above.kind === 'chemistry' ? ', unless the label of the maker allows more' : ''
    return `Do not charge at ${at}: ${show.current(above.value_A)} is all that ${whoLimits[above.kind]}${unless}. Set ${show.current(setting.current_A)} instead. For comparison, ${at} would take ${takes}.`
  }
  if (timed.sourceRunsOut) {
    return `Do not charge from this source: it does not carry the whole charge above its floor. From a larger one it takes ${takes} at ${at}.`
  }
  const { pack, target } = request
  const goal =
    target.kind === 'soc' ? show.percent(target.soc) : `${show.perCell(setting.cutoff.perCell_V)} per cell`
  const whole = `${takes} at ${at} to ${goal}.`
  return [whole[0]?.toUpperCase() + whole.slice(1), ...careWords(timed, setting, pack, show)].join(' ')
}
