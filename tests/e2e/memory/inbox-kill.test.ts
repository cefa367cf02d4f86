// An assistant is killed again and again while it is asked: nothing is done twice, nothing that was accepted is lost, and no
// answer is missing. INBOX_KILLS says how often.

import { expect, test } from 'vitest'
import { inboxKills } from '../../support/inbox-kills.ts'

const kills = Number(process.env.INBOX_KILLS ?? 300)

test('killed while it is asked, it does all once', { timeout: 3_600_000 }, async () => {
  const { doubled, lost, unanswered, faults, ...counts } = await inboxKills(kills)
  process.stdout.write(
    `killed ${counts.kills} times: ${counts.asked} questions asked, ${counts.replays} replays, ${doubled.length} done twice, ${lost.length} lost, ${unanswered.length} unanswered, ${counts.answeredAgain} answers sent again under their key\n`,
  )
  expect({ doubled, lost, unanswered, faults }).toEqual({ doubled: [], lost: [], unanswered: [], faults: [] })
  expect(counts.kills).toBeGreaterThanOrEqual(kills)
})
