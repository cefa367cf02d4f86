// An answer as it stands, struck through, under a line that says why.

import type { MatrixEvent } from 'matrix-js-sdk'
import type { Text } from '../../ground/text.ts'
import { type Rendered, renderText } from './render.ts'

export function struck(answer: MatrixEvent, why: Text): Rendered {
  const { body, formatted_body: html } = answer.getContent()
  const head = renderText(why)
  const lines = String(body ?? '').split('\n')
  return {
    ...head,
    body: [head.body, ...lines.map(line => `~~${line}~~`)].join('\n'),
    formatted_body: head.formatted_body + String(html ?? '').replace(/<(p|li)>(.*?)<\/\1>/gs, '<$1><del>$2</del></$1>'),
  }
}
