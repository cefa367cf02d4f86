// A reply as one JSON document, for scripts: base units, stable keys.

import { linesOf } from '../assistant/layers/short.ts'
import type { Reply } from '../assistant/reply.ts'

/**
 * Keys: command, readAs, assumed, verdict?, headline, short [lines for a phone], figures [{ key, label, value, unit, low?, high?, text }],
 * seeAlso?, working, cautions (sentences), deference, followUps [{ label, question }], question?, problem?, fault?,
 * understood? { intent, values [{ kind, text, start, end }], notUnderstood, dangers } of a plain sentence.
 * Units of figures are A, V, Ah, Wh, W, s, Ω and °C, or as the figure names.
 */
export function renderJson(reply: Reply, indent = 0): string {
  const { command, readAs, assumed, verdict, headline, figures, working, cautions, deference } = reply
  const { followUps, question, seeAlso, problem, fault, understood } = reply
  return JSON.stringify(
    {
      command,
      readAs,
      assumed,
      verdict,
      headline,
      short: linesOf(reply),
      figures,
      working,
      cautions: cautions.map(({ text }) => text),
      deference,
      followUps,
      question,
      seeAlso,
      problem,
      fault,
      understood,
    },
    null,
    indent,
  )
}
