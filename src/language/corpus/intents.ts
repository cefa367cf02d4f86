// What a person may want: something done, by the name of its command, or one of the few things no command does.

export const commandIntents = [
  'current',
  'time',
  'percent',
  'compare',
  'source',
  'supply',
  'lend',
  'lead',
  'energy',
  'plan',
  'parallel',
  'storage',
  'cells',
  'health',
  'trim',
  'travel',
  'kit save',
  'kit list',
  'kit rename',
  'kit remove',
  'log charge',
  'log show',
  'log meter',
  'log undo',
  'remind me',
  'remind list',
  'remind cancel',
  'rules',
  'house show',
  'house set',
  'history',
  'undo',
  'answer save',
  'answer list',
  'answer show',
  'answer edit',
  'answer move',
  'answer post',
  'answer remove',
  'lesson list',
  'lesson read',
  'lesson ask',
  'lesson answer',
  'export me',
  'forget me',
  'hello',
  'help',
] as const

/** They take rows of a file, or stand on a button: no sentence wants them. */
export const typedCommands: readonly string[] = ['log import', 'log export']

/**
 * handbook: what is, why, may I, how do I. trouble: something is wrong right now. amend: a change of the
 * question before, or an addition to it. smalltalk and notours are answered without charging.
 */
const otherIntents = ['handbook', 'trouble', 'amend', 'smalltalk', 'notours'] as const
export const intents = [...commandIntents, ...otherIntents] as const
export type Intent = (typeof intents)[number]
