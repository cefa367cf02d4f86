// Why a notice was not posted or pinned on Discord, and which permission is missing, by Discord's own names of them.

import type { Said } from '../ground/locale.ts'

export const may = {
  view: ({ say, own }) => say`I cannot see that channel: give me ${own('"View Channel"')} there.`,
  write: ({ say, own }) => say`I may not write there: give me ${own('"Send Messages"')} and ${own('"Embed Links"')}.`,
  pin: ({ say, own }) => say`To pin I need the permission ${own('"Pin Messages"')} there.`,
  direct: ({ say }) => say`Direct messages to that person are closed to me.`,
} as const satisfies Readonly<Record<string, Said>>

export const gone = {
  channel: ({ say }) => say`That channel is no more.`,
  card: ({ say }) => say`The card was deleted before it could be pinned.`,
} as const satisfies Readonly<Record<string, Said>>

export const pinsFull: Said = ({ say }) => say`That channel has as many pinned messages as Discord allows: unpin one.`
