// A link to a message.

import type { MatrixClient } from 'matrix-js-sdk'

/** Navigation by matrix.to: https://spec.matrix.org/v1.15/appendices/#matrixto-navigation */
export function linkTo(client: MatrixClient, roomId: string, eventId: string): string {
  const via = client.getDomain() ?? ''
  return `https://matrix.to/#/${encodeURIComponent(roomId)}/${encodeURIComponent(eventId)}?via=${encodeURIComponent(via)}`
}
